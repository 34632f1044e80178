import { render } from "preact";
import "./bare.css";

// The least that a page of the same make can be: one heading, kept by a worker of the same make.
const root = document.getElementById("app");
if (root !== null) {
  render(
    <main>
      <h1>A bare page</h1>
    </main>,
    root,
  );
}
const { Workbox } = await import("workbox-window");
await new Workbox("./service-worker.js", { updateViaCache: "none" }).register();
