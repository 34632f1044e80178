/** The verb as large as its longest word has room for: no word is broken. */
export function Verb({ verb }: { readonly verb: string }) {
  const letters = Math.max(...verb.split(/\s+/u).map((word) => word.length));
  return (
    <h1 class="run-verb">
      <span style={{ "--letters": letters }}>{verb}</span>
    </h1>
  );
}
