export type ShareOutcome = "shared" | "dismissed" | "saved" | "failed";

export interface SharedFile {
  /** Ends in .txt or .csv: phones refuse to share many other kinds. */
  readonly name: string;
  readonly type: string;
  readonly text: string | Blob;
}

async function offer(data: ShareData): Promise<ShareOutcome> {
  try {
    await navigator.share(data);
    return "shared";
  } catch (fault) {
    return fault instanceof DOMException && fault.name === "AbortError" ? "dismissed" : "failed";
  }
}

/** Whether a tap is recent enough for the share sheet; where the browser does not say it is tried. */
export const tapStillCounts = (): boolean =>
  !("userActivation" in navigator) || navigator.userActivation.isActive;

const canShare = (data: ShareData) => "canShare" in navigator && navigator.canShare(data);

/** Hands a text to the phone's share sheet; call inside a tap. `failed` where there is none. */
export async function shareText(title: string, text: string): Promise<ShareOutcome> {
  const data = { title, text };
  return canShare(data) ? offer(data) : "failed";
}

let lastSaved = "";

/** Saves a file where the browser puts downloads. */
export function saveFile(file: SharedFile): void {
  // Some browsers read the blob only after the click was handled, so it stays until the next one.
  URL.revokeObjectURL(lastSaved);
  const address = URL.createObjectURL(new Blob([file.text], { type: file.type }));
  lastSaved = address;
  const link = document.createElement("a");
  link.href = address;
  link.download = file.name;
  // Not revoked: some phones fetch it later. It goes with the page.
  link.click();
}

/** Hands a file to the share sheet, or saves it where there is none; call inside a tap. */
export async function shareFile(file: SharedFile): Promise<ShareOutcome> {
  const data = { files: [new File([file.text], file.name, { type: file.type })] };
  if (canShare(data)) {
    const outcome = await offer(data);
    if (outcome !== "failed") return outcome;
  }
  saveFile(file);
  return "saved";
}
