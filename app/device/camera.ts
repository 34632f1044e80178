/** Reads one picture of the camera; an empty list where nothing is seen. */
type Look = (video: HTMLVideoElement) => Promise<readonly string[]>;

/** What came of asking for the camera. */
export type CameraOutcome = "watching" | "refused" | "absent" | "part-missing";

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

const release = (stream: MediaStream | undefined): void => {
  for (const track of stream?.getTracks() ?? []) track.stop();
};

/** One that looks at what a stream shows; nothing where a part of it cannot be fetched. */
async function lookAt(video: HTMLVideoElement, stream: MediaStream): Promise<Look | undefined> {
  try {
    video.srcObject = stream;
    await video.play();
    return (await ownLook()) ?? (await libraryLook());
  } catch {
    return undefined;
  }
}

/**
 * The phone's camera as a reader of codes: on for as long as somebody looks at what it shows, never
 * while the page is out of sight or its screen was left. `again` calls back after so many ms.
 */
export function cameraWith(again: (ms: number, call: () => void) => void): Camera {
  let stream: MediaStream | undefined;
  let ended = false;
  let onSight: () => void = () => undefined;
  const letGo = () => {
    release(stream);
    stream = undefined;
  };
  const stop = () => {
    ended = true;
    document.removeEventListener("visibilitychange", onSight);
    letGo();
  };
  const isWanted = () => !ended && document.visibilityState !== "hidden";
  const begin = async (
    video: HTMLVideoElement,
    onCode: (text: string) => void,
  ): Promise<CameraOutcome> => {
    const got = await opened();
    if (!(got instanceof MediaStream)) return got;
    // The phone may have asked for longer than anybody stayed.
    if (!isWanted() || stream !== undefined) {
      release(got);
      return "watching";
    }
    stream = got;
    let look = await lookAt(video, got);
    if (look === undefined && stream === got) {
      letGo();
      return "part-missing";
    }
    const step = async () => {
      if (stream !== got || look === undefined) return;
      try {
        for (const text of await look(video)) onCode(text);
      } catch {
        look = await libraryLook().catch(() => look);
      }
      again(60, () => void step());
    };
    void step();
    return "watching";
  };
  const watch: Camera["watch"] = (video, onCode) => {
    onSight = () => {
      if (!isWanted()) letGo();
      else if (stream === undefined) void begin(video, onCode);
    };
    document.addEventListener("visibilitychange", onSight);
    return begin(video, onCode);
  };
  return { watch, stop };
}
