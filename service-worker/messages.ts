/** What the page may say to the worker. The page imports these types, never code. */
export type PageMessage =
  /** Take over from the worker in charge. The name is the one workbox-window uses. */
  | { readonly type: "SKIP_WAITING" }
  /** Say who you are; answered on the message's port with a `WorkerReport`. */
  | { readonly type: "REPORT" };

export interface WorkerReport {
  readonly version: string;
  /** Windows of the app open on this device, controlled by this worker or not. */
  readonly windows: number;
}
