import {
  BufferTarget,
  CanvasSource,
  getFirstEncodableVideoCodec,
  Mp4OutputFormat,
  Output,
  QUALITY_HIGH,
  WebMOutputFormat,
} from "mediabunny";
import type { Film } from "../../core/briefing/index.ts";
import { FILM_RATE } from "../../core/briefing/index.ts";
import type { Duration } from "../../core/units/index.ts";

/** A picture that can be looked at again is kept at least so often, in s, so that a player can go to any moment. */
const KEY_EVERY = 2;

/** What a film is made with. */
export interface FilmMaking {
  readonly film: Film;
  readonly canvas: HTMLCanvasElement;
  /** Paints the moment at a PET on the canvas. */
  readonly paint: (pet: Duration) => Promise<void>;
  /** Told after each picture how many are made. */
  readonly onPicture: (made: number) => void;
  readonly signal: AbortSignal;
}

/** A film that was made. */
export interface MadeFilm {
  readonly bytes: ArrayBuffer;
  /** Of the file's name, with its dot. */
  readonly ending: string;
  readonly type: string;
}

/** How a film can be encoded here; `null` for not at all. MP4 plays on more devices, so it comes first. */
async function waysHere({ width, height }: { readonly width: number; readonly height: number }) {
  const size = { width, height, quality: QUALITY_HIGH };
  // Some browsers throw where others answer no.
  const first = async (...of: Parameters<typeof getFirstEncodableVideoCodec>) => {
    try {
      return await getFirstEncodableVideoCodec(...of);
    } catch {
      return null;
    }
  };
  const inMp4 = await first(["avc", "hevc"], size);
  if (inMp4) return { codec: inMp4, format: new Mp4OutputFormat() };
  const inWebM = await first(["vp9", "av1", "vp8"], size);
  return inWebM ? { codec: inWebM, format: new WebMOutputFormat() } : null;
}

/**
 * Makes a film picture by picture, without a microphone, a recorder or a visible page: each picture is waited for, so that
 * none is missing on a slow device. `null` where the browser can encode no film. Rejects with the signal's reason when it
 * was cancelled, and with the encoder's error.
 */
export async function makeFilm({
  film,
  canvas,
  paint,
  onPicture,
  signal,
}: FilmMaking): Promise<MadeFilm | null> {
  if (typeof VideoEncoder === "undefined") return null;
  const way = await waysHere(canvas);
  if (!way) return null;
  const { codec, format } = way;
  const target = new BufferTarget();
  const output = new Output({ format, target });
  const source = new CanvasSource(canvas, { codec, quality: QUALITY_HIGH, keyFrameInterval: KEY_EVERY });
  output.addVideoTrack(source, { frameRate: FILM_RATE });
  try {
    await output.start();
    for (let picture = 0; picture < film.pictures; picture += 1) {
      signal.throwIfAborted();
      await paint(film.petOf(picture));
      await source.add(picture / FILM_RATE, 1 / FILM_RATE);
      onPicture(picture + 1);
    }
    await output.finalize();
  } catch (cause) {
    await output.cancel();
    throw cause;
  }
  return target.buffer && { bytes: target.buffer, ending: format.fileExtension, type: format.mimeType };
}
