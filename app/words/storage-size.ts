import { decimals } from "./format.ts";
import { tongue } from "./tongue.ts";

/** An amount of storage: "340 kB", "1.2 MB". */
export function storageSize(bytes: number): string {
  const [kilo, mega, giga] = tongue.value.sizes;
  if (bytes < 999_500) return `${decimals(bytes / 1000, 0)} ${kilo}`;
  if (bytes < 999_500_000) return `${decimals(bytes / 1_000_000, 1)} ${mega}`;
  return `${decimals(bytes / 1_000_000_000, 1)} ${giga}`;
}
