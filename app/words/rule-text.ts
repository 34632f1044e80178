import type { Rule } from "../../core/quantity/figure.ts";
import { tongue } from "./tongue.ts";

/** What another language says of a rule in place of the core's own words; a bare formula stays. */
export type RuleText = Partial<Pick<Rule, "formula" | "source" | "limits">>;

/** A rule in the language of the moment. */
export function ruleText(rule: Rule): Rule {
  const texts = tongue.value.words?.ruleTexts;
  const said: unknown = texts && Reflect.get(texts, rule.key);
  return typeof said === "object" && said !== null ? { ...rule, ...said } : rule;
}
