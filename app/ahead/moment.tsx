import { useMemo, useState } from "preact/hooks";
import { localDays } from "../../core/board/schedule/hours.ts";
import { type ReadyBy, readyByOf } from "../../core/board/schedule/ready-by.ts";
import { HOUR } from "../../core/quantity/time-units-table.ts";
import { localOf, phoneZone } from "../local-time.ts";
import { Chips } from "../parts/chips.tsx";
import { SelectField } from "../parts/select-field.tsx";
import { TapButton } from "../parts/tap-button.tsx";
import { TimeField } from "../parts/time-field.tsx";
import { day, fileDate } from "../words/format.ts";
import { sayLater } from "../words/say-later.ts";
import { minute } from "./prep.ts";
import "./moment.css";

/** A date and a time as they stand in their fields, and the moment they mean. */
export interface Moment {
  readonly date: string;
  readonly time: string;
  /** Whose clocks show it. */
  readonly zone: string;
  readonly setZone: (zone: string) => void;
  readonly setDate: (date: string) => void;
  readonly setTime: (time: string) => void;
  /** Epoch ms; nothing while there is no date or time. */
  readonly at: number | undefined;
  readonly shown: ReadyBy["shown"];
  /** What is missing, as a sentence. */
  readonly fault: string | undefined;
}

const SERVICE = "17:00";
const WEEK = 7;
const NOON = 12 * HOUR;

const two = (value: number): string => String(value).padStart(2, "0");

function timeOf(moment: number): string {
  const { hour, minute } = localOf(moment, phoneZone());
  return `${two(hour)}:${two(minute)}`;
}

/** A moment that is being chosen. @param start - epoch ms; service time on no day unless told */
export function useMoment(start?: number): Moment {
  const [date, setDate] = useState(start === undefined ? "" : fileDate(start));
  const [time, setTime] = useState(start === undefined ? SERVICE : timeOf(start));
  const [zone, setZone] = useState(phoneZone());
  const words = sayLater.plan.ready;
  const read = readyByOf({ date, time, zone }, localOf);
  const fault = read.ok
    ? undefined
    : read.refusal === "not-a-date"
      ? words.needDate
      : words.needTime;
  return {
    date,
    time,
    zone,
    setDate,
    setTime,
    setZone,
    fault,
    at: read.ok ? read.value.at : undefined,
    shown: read.ok ? read.value.shown : "once",
  };
}

/** The coming days, each a tap away: "Friday" is said more often than a date. */
function Days({ moment }: { readonly moment: Moment }) {
  const days = localDays(minute.value, WEEK, phoneZone(), localOf);
  return (
    <Chips
      label={sayLater.plan.ready.day}
      // Noon is on the same date whatever the clocks do that night.
      options={days.map(({ from }) => ({
        value: fileDate(from + NOON),
        label: day(from + NOON),
      }))}
      value={moment.date === "" ? null : moment.date}
      onChange={moment.setDate}
    />
  );
}

/** Whose clocks are meant: the phone's own, unless the batch is for somewhere else. */
function Zone({ moment }: { readonly moment: Moment }) {
  const [open, setOpen] = useState(false);
  const words = sayLater.plan.ready;
  const zones = useMemo(
    () => [...new Set([phoneZone(), ...Intl.supportedValuesOf("timeZone")])],
    [],
  );
  if (!open) {
    return (
      <TapButton size="least" tone="quiet" onAct={() => setOpen(true)}>
        {words.zone(moment.zone)}
      </TapButton>
    );
  }
  return (
    <SelectField
      label={words.otherZone}
      choices={zones.map((zone) => ({ value: zone, label: zone.replaceAll("_", " ") }))}
      value={moment.zone}
      onChange={moment.setZone}
    />
  );
}

/** The fields of a moment, and what is to be said of it. */
export function MomentFields({ moment }: { readonly moment: Moment }) {
  const words = sayLater.plan.ready;
  return (
    <>
      <Days moment={moment} />
      <div class="moment">
        <TimeField label={words.date} kind="date" value={moment.date} onChange={moment.setDate} />
        <TimeField label={words.time} value={moment.time} onChange={moment.setTime} />
      </div>
      {moment.fault !== undefined && <p>{moment.fault}</p>}
      {moment.shown !== "once" && <p>{words.odd[moment.shown]}</p>}
      <Zone moment={moment} />
    </>
  );
}
