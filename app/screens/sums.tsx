import type { ComponentType } from "preact";
import { LinkButton } from "../parts/link-button.tsx";
import { routes } from "../routes.ts";
import { say } from "../words/say.ts";
import { sayLater } from "../words/say-later.ts";
import { AcidSum } from "./sums/acid-sum.tsx";
import { FreezeSum } from "./sums/freeze-sum.tsx";
import { IceSum } from "./sums/ice-sum.tsx";
import { PhSum } from "./sums/ph-sum.tsx";
import { SalineSum } from "./sums/saline-sum.tsx";
import { SpiritSum } from "./sums/spirit-sum.tsx";
import { SyrupSum } from "./sums/syrup-sum.tsx";
import "./sums.css";

const words = sayLater.sums;

const ORDER = ["spirit", "syrup", "acid", "saline", "freeze", "ice", "ph"] as const;

const PAGES: ReadonlyMap<string, ComponentType> = new Map([
  ["spirit", SpiritSum],
  ["syrup", SyrupSum],
  ["acid", AcidSum],
  ["saline", SalineSum],
  ["freeze", FreezeSum],
  ["ice", IceSum],
  ["ph", PhSum],
]);

function List() {
  return (
    <main class="sums">
      <LinkButton tone="quiet" href={routes.specs}>
        {words.toSpecs}
      </LinkButton>
      <h1>{words.title}</h1>
      <p>{words.lead}</p>
      <ul class="sums-list">
        {ORDER.map((id) => (
          <li key={id}>
            <a class="sums-entry" href={routes.sum(id)}>
              <span class="sums-name">{words.sum[id].title}</span>
              <span class="sums-detail">{words.sum[id].detail}</span>
            </a>
          </li>
        ))}
      </ul>
    </main>
  );
}

/** Quick sums at the bench: the list of them, or one. */
export function SumsScreen({ id }: { readonly id: string }) {
  if (id === "") return <List />;
  const Page = PAGES.get(id);
  return Page === undefined ? <p class="app-say">{say.places.lost}</p> : <Page />;
}
