import { build, type Rolldown } from "vite";

/** A page with nothing on it but the parts; what they do is written to `done`. */
const PAGE = `
  import { h, render } from "preact";
  import { useState } from "preact/hooks";
  import "/app/style/tokens.css";
  import "/app/style/base.css";
  import { Chips } from "/app/parts/chips.tsx";
  import { HoldButton } from "/app/parts/hold-button.tsx";
  import { NumberPad } from "/app/parts/number-pad.tsx";
  import { Stepper } from "/app/parts/stepper.tsx";
  import { TapButton } from "/app/parts/tap-button.tsx";

  globalThis.done = [];
  const does = (what) => () => done.push(what);
  const hints = { rest: "Hold", short: "Keep holding", wet: "Wipe the screen" };
  const words = { label: "Collected", unit: "ml", erase: "Erase", mark: "point", done: "Save", hints };
  const Parts = () => {
    const [look, setLook] = useState("cloudy");
    const [typed, setTyped] = useState("");
    const [litres, setLitres] = useState(4);
    const [step, setStep] = useState("Pour");
    globalThis.moveOn = setStep;
    return h("main", { style: "display: grid; gap: 12px; padding: 16px" }, [
      h("h1", {}, "Parts"),
      h(HoldButton, { label: step, hints, onAct: does(step.toLowerCase()), onSpoiled: (why) => done.push(why) }),
      h(HoldButton, { label: "Drop it", hints, tone: "plain", size: "secondary", onAct: does("drop") }),
      h(HoldButton, { label: "Not yet", hints, disabled: true, onAct: does("too early") }),
      h(TapButton, { onAct: does("note") }, "Note"),
      h(TapButton, { size: "least", tone: "quiet", onAct: does("why") }, "Why?"),
      h(Stepper, {
        label: "Vessel",
        shown: litres + " L",
        lessName: "Less",
        moreName: "More",
        atLeast: litres <= 3,
        onLess: () => setLitres(litres - 1),
        onMore: () => setLitres(litres + 1),
      }),
      h(Chips, {
        label: "Look",
        value: look,
        onChange: setLook,
        options: ["cloudy", "hazy", "clear"].map((value) => ({ value, label: value })),
      }),
      h(NumberPad, { value: typed, onChange: setTyped, onDone: () => done.push("save " + typed), words }),
    ]);
  };
  render(h(Parts), document.body);
`;

/** That page, in one piece: scripts and styles stand in it. */
export async function pageOfParts(): Promise<string> {
  const made = await build({
    configFile: false,
    publicDir: false,
    logLevel: "warn",
    define: { "process.env.NODE_ENV": JSON.stringify("production") },
    plugins: [
      {
        name: "page-of-parts",
        resolveId: (id) => {
          if (id === "virtual:parts") return id;
          return id.startsWith("/app/") ? `${process.cwd()}${id}` : null;
        },
        load: (id) => (id === "virtual:parts" ? PAGE : null),
      },
    ],
    build: { write: false, rolldownOptions: { input: "virtual:parts" } },
  });
  const files = [made].flat().flatMap((one) => ("output" in one ? one.output : []));
  const code = files.map((file) => (file.type === "chunk" ? file.code : "")).join("");
  const isCss = (file: Rolldown.OutputAsset | Rolldown.OutputChunk): file is Rolldown.OutputAsset =>
    file.type === "asset" && file.fileName.endsWith(".css");
  const css = files.filter(isCss).map((file) => String(file.source));
  if (!css.join("").includes(".hold-button")) throw new RangeError("the parts came without styles");
  return `<!doctype html><html lang="en"><title>Parts</title>
    <meta name="viewport" content="width=device-width"><style>${css.join("")}</style><body>
    <script type="module">${code.replaceAll("</script", "<\\/script")}</script>`;
}
