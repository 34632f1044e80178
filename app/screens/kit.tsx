import type { NotifyState } from "../alarm/notify.ts";
import { DemoHistory } from "../demo/history/asked-for.tsx";
import { Practise } from "../demo/practice/asked-for.tsx";
import { LinkButton } from "../parts/link-button.tsx";
import { routes } from "../routes.ts";
import type { UpdateOutcome } from "../update.ts";
import { sayLater } from "../words/say-later.ts";
import { MakeBackup } from "./kit/backup.tsx";
import { Theme, Tools, Units } from "./kit/choices.tsx";
import { Hands } from "./kit/hands.tsx";
import { StorageFacts } from "./kit/keeping.tsx";
import { Languages } from "./kit/language.tsx";
import { Notices } from "./kit/notices.tsx";
import { Restore } from "./kit/restore.tsx";
import { Room } from "./kit/room.tsx";
import { SoundCheck } from "./kit/sound.tsx";
import { Spoken } from "./kit/spoken.tsx";
import { Tables } from "./kit/table.tsx";
import { Take } from "./kit/take.tsx";
import { Version } from "./kit/version.tsx";
import "./kit.css";

interface KitProps {
  /** Plays one round of the alarm; called inside a tap. */
  readonly onSoundCheck: () => void;
  readonly onUpdate: () => Promise<UpdateOutcome>;
  readonly notices: NotifyState;
  readonly onAskNotices: () => Promise<NotifyState>;
}

function Cautions() {
  return (
    <section class="part">
      <h2>{sayLater.kit.cautions.title}</h2>
      <ul class="kit-list">
        {Object.values(sayLater.cautions.house).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}

/** What is set once: sound, units, screen, backup, storage, version, the house's cautions. */
export function KitScreen(props: KitProps) {
  const { onSoundCheck, onUpdate, notices, onAskNotices } = props;
  const words = sayLater.kit;
  return (
    <main class="kit">
      <h1>{words.title}</h1>
      <SoundCheck onSoundCheck={onSoundCheck} />
      <Spoken />
      <Notices state={notices} onAsk={onAskNotices} />
      <MakeBackup />
      <Restore />
      <Take />
      <Tables />
      <Languages />
      <Units />
      <Tools />
      <Room />
      <Theme />
      <Hands />
      <Cautions />
      <StorageFacts />
      <Version onUpdate={onUpdate} />
      <section class="part">
        <h2>{words.demo.title}</h2>
        <p>{words.demo.why}</p>
        <LinkButton href={routes.specs}>{words.demo.link}</LinkButton>
        <DemoHistory />
        <Practise />
      </section>
    </main>
  );
}
