import { encode } from "uqr";
import "./qr-code.css";

/** A text as a QR code (ISO/IEC 18004). It is black on white in every theme, so that any camera reads it. */
export function QrCode({ text, label }: { readonly text: string; readonly label: string }) {
  const { data, size } = encode(text, { ecc: "M", border: 4 });
  const dark = data.flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? `M${x} ${y}h1v1h-1z` : [])));
  return (
    <svg className="qr-code" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={label}>
      <rect width={size} height={size} fill="#fff" />
      <path d={dark.join("")} fill="#000" shapeRendering="crispEdges" />
    </svg>
  );
}
