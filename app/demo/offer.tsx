import type { ComponentChildren } from "preact";
import "./offer.css";

interface OfferProps {
  readonly why: string;
  /** One thing to press. */
  readonly children: ComponentChildren;
  /** Why it could not be done, and what to do. */
  readonly fault: string | undefined;
}

/** Something invented to look at or to practise on, and what for. */
export function Offer({ why, children, fault }: OfferProps) {
  return (
    <div class="offer">
      <p>{why}</p>
      {children}
      {fault !== undefined && <p role="alert">{fault}</p>}
    </div>
  );
}
