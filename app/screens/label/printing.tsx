import { useState } from "preact/hooks";
import { labelOf } from "../../../core/label/label.ts";
import { labelsOn, PAPERS, pageOf, paperOf } from "../../../core/label/paper.ts";
import { serveCardOf } from "../../../core/label/serve-card.ts";
import type { Run } from "../../../core/run/run.ts";
import { codeRows } from "../../label/code.ts";
import { drawn, pagesOf } from "../../label/drawn.ts";
import { usePageSize } from "../../label/page-size.ts";
import { Chips } from "../../parts/chips.tsx";
import { LabelPage, SheetMap } from "../../parts/label-card.tsx";
import { SelectField } from "../../parts/select-field.tsx";
import { settings } from "../../state.ts";
import { sayLater } from "../../words/say-later.ts";
import { Acts } from "./act.tsx";
import { useChoices } from "./choices.ts";
import { Copies } from "./copies.tsx";
import { Preview, paperName } from "./preview.tsx";
import { KINDS, type Kind, wantedOf } from "./wanted.ts";

/** More would make a phone slow, and no sheet feeder holds them. */
const MOST = 200;

/** What to print, on what, how many, and the ways to do it. */
export function Printing({ run }: { readonly run: Run }) {
  const words = sayLater.label;
  const style = settings.value;
  const kinds = KINDS.filter((one) => wantedOf(run, one, style).length > 0);
  // What stands and waits is not in its bottles yet.
  const [picked, setPicked] = useState<Kind>(kinds.includes("vessel") ? "vessel" : "bottle");
  const kind = kinds.includes(picked) ? picked : "bottle";
  const [chosen, choose] = useChoices();
  const paper = paperOf(chosen.labelPaper);
  const page = pageOf(paper);
  usePageSize(page.width, page.height);
  const wanted = wantedOf(run, kind, style);
  const code = codeRows(run.batch);
  const labels = wanted.map(({ content }) => drawn({ ...content, code: code.length }, code, paper));
  const fits = !labels.includes(undefined);
  const all = fits
    ? wanted.flatMap(({ each }, index) => {
        const label = labels[index];
        return label ? Array.from({ length: chosen.labelCopies || each }, () => label) : [];
      })
    : [];
  const from = Math.min(chosen.labelFrom, labelsOn(paper));
  const pages = pagesOf(all.slice(0, MOST), paper, from - 1);
  const label = labelOf(run);
  const serve = serveCardOf(run);
  const count = Math.min(all.length, MOST);
  return (
    <>
      {kinds.length > 1 && (
        <Chips
          label={words.which}
          options={kinds.map((value) => ({ value, label: words.kinds[value] }))}
          value={kind}
          onChange={setPicked}
        />
      )}
      {serve === undefined && <p class="label-copies">{words.noServe}</p>}
      <SelectField
        label={words.paper}
        choices={PAPERS.map((one) => ({ value: one.id, label: paperName(one) }))}
        value={paper.id}
        onChange={(labelPaper) => choose({ labelPaper })}
      />
      <Preview
        choose={choose}
        wanted={wanted}
        labels={labels}
        name={words.kinds[kind]}
        code={code}
        paper={paper}
      />
      {fits && <Copies paper={paper} chosen={chosen} choose={choose} />}
      {all.length > MOST && <p>{words.tooMany(MOST)}</p>}
      {pages[0] !== undefined && paper.sheet !== undefined && (
        <div class="label-one">
          <SheetMap page={pages[0]} name={words.sheetMap(count, pages.length, from)} />
          <p class="label-copies">{words.sheetMap(count, pages.length, from)}</p>
        </div>
      )}
      {fits && paper.sheet === undefined && <p class="label-copies">{words.rollMap(count)}</p>}
      <Acts
        title={words.shareTitle(label.name, label.batch)}
        file={`${kind}-${run.batch.replace(/[^\p{Letter}\p{Number}-]+/gu, "-")}`}
        text={words.asText(label, serve, style)}
        pages={pages}
      />
      <div class="label-pages">
        {pages.map((one, index) => (
          <LabelPage key={index} page={one} />
        ))}
      </div>
    </>
  );
}
