import { useEffect, useState } from "preact/hooks";
import { photosOf } from "../../../core/run/keepsakes.ts";
import type { Pictured, Run } from "../../../core/run/run.ts";
import { tell } from "../../commands.ts";
import { noted } from "../../noted.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { addPhoto, photosHere } from "../../photos.ts";
import { stampTime } from "../../words/format.ts";
import { say } from "../../words/say.ts";
import { sayLater, sentence } from "../../words/say-later.ts";

/** Addresses of the pictures that are on this phone, by id; given back when they are not shown. */
function useAddresses(run: Run): ReadonlyMap<string, string> | undefined {
  const [addresses, setAddresses] = useState<ReadonlyMap<string, string>>();
  const wanted = photosOf(run)
    .map(({ photo }) => photo)
    .join();
  useEffect(() => {
    let made: ReadonlyMap<string, string> = new Map();
    let left = false;
    const give = () => {
      for (const address of made.values()) URL.revokeObjectURL(address);
    };
    photosHere(run).then(
      (here) => {
        made = new Map(
          here.map(({ id, type, bytes }) => [id, URL.createObjectURL(new Blob([bytes], { type }))]),
        );
        if (left) give();
        else setAddresses(made);
      },
      // The phone's storage does not answer: they are shown as not here.
      () => setAddresses(new Map()),
    );
    return () => {
      left = true;
      give();
    };
  }, [run.id, wanted]);
  return addresses;
}

interface PickProps {
  readonly label: string;
  readonly camera: boolean;
  readonly onFile: (file: File) => void;
}

/** The phone's own camera, or its own chooser of pictures. */
function Pick({ label, camera, onFile }: PickProps) {
  return (
    <label class="batch-pick">
      {label}
      <input
        type="file"
        accept="image/*"
        {...(camera && { capture: "environment" })}
        onChange={(event) => {
          const input = event.currentTarget;
          const [file] = input.files ?? [];
          if (file !== undefined) onFile(file);
          // The same picture may be chosen again.
          input.value = "";
        }}
      />
    </label>
  );
}

function Add({ runId }: { readonly runId: string }) {
  const [state, setState] = useState<{ working: boolean; fault?: string }>({ working: false });
  const words = sayLater.photos;
  const add = async (file: File) => {
    setState({ working: true });
    const added = await addPhoto(runId, file);
    if (added.ok) tell(words.added, { runId, act: added.value });
    setState(added.ok ? { working: false } : { working: false, fault: sentence(added) });
  };
  return (
    <>
      <Pick label={words.take} camera onFile={(file) => void add(file)} />
      <Pick label={words.choose} camera={false} onFile={(file) => void add(file)} />
      <p role="status">{state.working && words.working}</p>
      {state.fault !== undefined && (
        <p class="batch-fault" role="alert">
          {state.fault}
        </p>
      )}
    </>
  );
}

interface LargeProps {
  readonly runId: string;
  readonly photo: Pictured;
  readonly number: number;
  readonly address: string | undefined;
  readonly onClose: () => void;
}

function Large({ runId, photo, number, address, onClose }: LargeProps) {
  const [fault, setFault] = useState<string | undefined>(undefined);
  const words = sayLater.photos;
  const remove = async () => {
    const order = { type: "remove-photo", photo: photo.photo } as const;
    const wrong = await noted(runId, order, words.removed);
    setFault(wrong);
    if (wrong === undefined) onClose();
  };
  return (
    <div class="batch-large">
      {address === undefined ? (
        <p>{words.elsewhereLong}</p>
      ) : (
        <img
          src={address}
          width={photo.width}
          height={photo.height}
          alt={words.alt(number, stampTime(photo.at))}
        />
      )}
      <TapButton onAct={onClose}>{words.close}</TapButton>
      {fault !== undefined && (
        <p class="batch-fault" role="alert">
          {fault}
        </p>
      )}
      <HoldButton
        label={words.remove}
        hints={say.work.hints}
        tone="plain"
        size="secondary"
        onAct={() => void remove()}
      />
    </div>
  );
}

/** Pictures of a batch: taken or chosen, small, opened large, removed. */
export function Photos({ run }: { readonly run: Run }) {
  const [shown, setShown] = useState<string | undefined>(undefined);
  const addresses = useAddresses(run);
  const words = sayLater.photos;
  const all = photosOf(run);
  const large = all.findIndex(({ photo }) => photo === shown);
  const open = all[large];
  return (
    <section class="part">
      <h2>{words.title}</h2>
      {all.length === 0 && <p>{words.none}</p>}
      <ul class="batch-photos">
        {all.map(({ photo, at }, index) => {
          const address = addresses?.get(photo);
          return (
            <li key={photo}>
              <button
                type="button"
                class="batch-photo"
                aria-label={words.open(index + 1, stampTime(at))}
                aria-expanded={photo === shown}
                onClick={() => setShown(photo === shown ? undefined : photo)}
              >
                {address !== undefined && <img src={address} alt="" />}
                {address === undefined && addresses !== undefined && words.elsewhere}
              </button>
            </li>
          );
        })}
      </ul>
      {open !== undefined && (
        <Large
          key={open.photo}
          runId={run.id}
          photo={open}
          number={large + 1}
          address={addresses?.get(open.photo)}
          onClose={() => setShown(undefined)}
        />
      )}
      <Add runId={run.id} />
      <p class="soft">{words.note}</p>
    </section>
  );
}
