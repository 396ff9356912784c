import { readFileSync, writeFileSync } from "node:fs";
import { chromium } from "@playwright/test";
import { chromiumArguments } from "./browser-launch.ts";
import { obtainChromium } from "./find-chromium.ts";

/** Draws every bitmap of the icon from its one source, src/app/public/icon.svg. Run by hand after changing it. */
const icon = readFileSync("src/app/public/icon.svg", "utf8");
const ground = "#f3f0e8";
const withoutGround = icon.replace(/<rect width="512" height="512"[^>]*>/, "");

interface Picture {
  readonly file: string;
  readonly size: number;
  /** How much of the picture's width the drawing takes. */
  readonly share?: number;
  readonly transparent?: boolean;
  readonly round?: boolean;
}

const android = "android/app/src/main/res";
const densities = { mdpi: 48, hdpi: 72, xhdpi: 96, xxhdpi: 144, xxxhdpi: 192 };
const pictures: readonly Picture[] = [
  { file: "src/app/public/icon-180.png", size: 180 },
  { file: "src/app/public/icon-192.png", size: 192 },
  { file: "src/app/public/icon-512.png", size: 512 },
  ...Object.entries(densities).flatMap(([density, size]) => [
    { file: `${android}/mipmap-${density}/ic_launcher.png`, size },
    { file: `${android}/mipmap-${density}/ic_launcher_round.png`, size, round: true },
    {
      file: `${android}/mipmap-${density}/ic_launcher_foreground.png`,
      size: (size * 108) / 48,
      share: 0.66,
      transparent: true,
    },
  ]),
  { file: `${android}/drawable/splash.png`, size: 480, share: 0.5 },
  { file: "ios/App/App/Assets.xcassets/AppIcon.appiconset/AppIcon-512@2x.png", size: 1024 },
  { file: "ios/App/App/Assets.xcassets/Splash.imageset/splash-2732x2732.png", size: 2732, share: 0.2 },
];

const browser = await chromium.launch({ executablePath: obtainChromium(), args: [...chromiumArguments] });
const page = await browser.newPage();
for (const { file, size, share = 1, transparent = false, round = false } of pictures) {
  const drawing = share === 1 && !transparent ? icon : withoutGround;
  await page.setViewportSize({ width: size, height: size });
  await page.setContent(
    `<style>html,body{margin:0;height:100%;background:transparent}
     div{height:100%;display:grid;place-items:center;overflow:hidden;background:${transparent ? "transparent" : ground};border-radius:${round ? "50%" : "0"}}
     svg{width:${share * 100}%;height:${share * 100}%;display:block}</style><div>${drawing}</div>`,
  );
  writeFileSync(file, await page.screenshot({ omitBackground: transparent || round }));
}
await browser.close();
