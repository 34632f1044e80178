/** Reads one picture of the camera; an empty list where nothing is seen. */
type Look = (video: HTMLVideoElement) => Promise<readonly string[]>;

/** What came of asking for the camera. */
export type CameraOutcome = "watching" | "refused" | "absent";

export interface Camera {
  /** Shows the camera in a video element and hears of every code it sees, until stopped. */
  readonly watch: (
    video: HTMLVideoElement,
    onCode: (text: string) => void,
  ) => Promise<CameraOutcome>;
  readonly stop: () => void;
}

interface Detector {
  readonly detect: (video: HTMLVideoElement) => Promise<readonly { readonly rawValue: string }[]>;
}
interface DetectorKind {
  new (options: { readonly formats: readonly string[] }): Detector;
  getSupportedFormats(): Promise<readonly string[]>;
}

function hasDetector(host: object): host is { BarcodeDetector: DetectorKind } {
  return "BarcodeDetector" in host;
}

/** The phone's own reader, where it has one that works: some have it in name only. */
async function ownLook(): Promise<Look | undefined> {
  try {
    if (!hasDetector(window)) return undefined;
    const kind = window.BarcodeDetector;
    if (!(await kind.getSupportedFormats()).includes("qr_code")) return undefined;
    const detector = new kind({ formats: ["qr_code"] });
    return async (video) => (await detector.detect(video)).map(({ rawValue }) => rawValue);
  } catch {
    return undefined;
  }
}

/** Wide enough for a code that fills most of the picture, small enough for a slow phone. */
const WIDTH = 720;

/** A reader of ours for phones without one. */
async function libraryLook(): Promise<Look> {
  const { decodeQR } = await import("qr/decode.js");
  const canvas = document.createElement("canvas");
  const pen = canvas.getContext("2d", { willReadFrequently: true });
  return async (video) => {
    if (pen === null || video.videoWidth === 0) return [];
    canvas.width = Math.min(WIDTH, video.videoWidth);
    canvas.height = Math.round((canvas.width * video.videoHeight) / video.videoWidth);
    pen.drawImage(video, 0, 0, canvas.width, canvas.height);
    try {
      return [decodeQR(pen.getImageData(0, 0, canvas.width, canvas.height))];
    } catch {
      // It throws where it sees no code.
      return [];
    }
  };
}

const MEDIA = { video: { facingMode: "environment" }, audio: false };

async function opened(): Promise<MediaStream | CameraOutcome> {
  const { mediaDevices }: { mediaDevices?: MediaDevices } = navigator;
  if (mediaDevices === undefined) return "absent";
  try {
    return await mediaDevices.getUserMedia(MEDIA);
  } catch (fault) {
    const none = fault instanceof DOMException && fault.name === "NotFoundError";
    return none ? "absent" : "refused";
  }
}

/** The phone's camera as a reader of codes. `again` calls back after so many ms. */
export function cameraWith(again: (ms: number, call: () => void) => void): Camera {
  let stream: MediaStream | undefined;
  const stop = () => {
    for (const track of stream?.getTracks() ?? []) track.stop();
    stream = undefined;
  };
  const watch: Camera["watch"] = async (video, onCode) => {
    const got = await opened();
    if (!(got instanceof MediaStream)) return got;
    stream = got;
    video.srcObject = got;
    await video.play();
    let look = (await ownLook()) ?? (await libraryLook());
    const step = async () => {
      if (stream !== got) return;
      try {
        for (const text of await look(video)) onCode(text);
      } catch {
        look = await libraryLook();
      }
      again(60, () => void step());
    };
    void step();
    return "watching";
  };
  return { watch, stop };
}
