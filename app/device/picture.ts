/** A picture as it is kept. */
export interface Picture {
  /** Media type. */
  readonly media: string;
  readonly bytes: ArrayBuffer;
  readonly width: number;
  readonly height: number;
}

/** Longest side, CSS px of the picture: more than any phone shows. */
const LONGEST = 1600;
const QUALITY = 0.8;
const MEDIA = "image/jpeg";

/** An image element turns a picture the way its camera was held. */
async function opened(address: string): Promise<HTMLImageElement | undefined> {
  const image = new Image();
  image.src = address;
  try {
    await image.decode();
    return image.naturalWidth > 0 ? image : undefined;
  } catch {
    return undefined;
  }
}

function drawn(image: HTMLImageElement): HTMLCanvasElement | undefined {
  const { naturalWidth, naturalHeight } = image;
  const scale = Math.min(1, LONGEST / Math.max(naturalWidth, naturalHeight));
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(naturalWidth * scale));
  canvas.height = Math.max(1, Math.round(naturalHeight * scale));
  const pen = canvas.getContext("2d");
  if (pen === null) return undefined;
  pen.imageSmoothingQuality = "high";
  pen.drawImage(image, 0, 0, canvas.width, canvas.height);
  return canvas;
}

/**
 * A picture drawn anew, small enough to be kept: upright, and without anything that its camera wrote
 * into it, such as the place. Nothing where the file is no picture that this browser can open.
 */
export async function smallPicture(file: Blob): Promise<Picture | undefined> {
  const address = URL.createObjectURL(file);
  try {
    const image = await opened(address);
    const canvas = image && drawn(image);
    if (canvas === undefined) return undefined;
    const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, MEDIA, QUALITY));
    if (blob === null) return undefined;
    const { width, height } = canvas;
    return { media: blob.type, bytes: await blob.arrayBuffer(), width, height };
  } finally {
    URL.revokeObjectURL(address);
  }
}
