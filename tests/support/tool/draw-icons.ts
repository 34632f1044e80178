// Redraws the PNG icons from app/public/icon.svg: npm run icons
import { readFileSync, writeFileSync } from "node:fs";
import { openPhone } from "../phone/browser.ts";

const FOLDER = "app/public";
// The launcher cuts its own shape out of a maskable icon, and a phone's home screen out of the
// touch icon: those are filled to the corners.
const ICONS = [
  { name: "icon-192", size: 192, toTheCorners: false },
  { name: "icon-512", size: 512, toTheCorners: false },
  { name: "maskable-192", size: 192, toTheCorners: true },
  { name: "maskable-512", size: 512, toTheCorners: true },
  { name: "apple-touch-180", size: 180, toTheCorners: true },
] as const;

const drawing = readFileSync(`${FOLDER}/icon.svg`, "utf8");
const phone = await openPhone({ origin: "none", pixelsPerPoint: 1 });
for (const { name, size, toTheCorners } of ICONS) {
  const svg = toTheCorners ? drawing.replace(/ rx="\d+"/, "") : drawing;
  await phone.page.setViewportSize({ width: size, height: size });
  await phone.page.setContent(
    `<meta name="viewport" content="width=device-width"><style>body{margin:0}svg{display:block;inline-size:100vw;block-size:100vh}</style>${svg}`,
  );
  writeFileSync(`${FOLDER}/${name}.png`, await phone.page.screenshot({ omitBackground: true }));
}
await phone.close();
