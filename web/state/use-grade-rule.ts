// The rule by which this shop grades; the last one seen is kept on this device, for the time without a server.
import {useEffect, useMemo} from "react";
import {defaultRule} from "../../state/default-rule.ts";
import {gradeRuleSchema, type GradeRule} from "../../state/rule.ts";
import {useSetting} from "../worth/terms/use-setting.ts";

const key = "ticking.grade-rule";

export function useGradeRule(): GradeRule {
  const {value} = useSetting<GradeRule>("grade-rule");
  const kept = useMemo(lastSeen, []);
  useEffect(() => {
    if (value) localStorage.setItem(key, JSON.stringify(value));
  }, [value]);
  return value ?? kept ?? defaultRule;
}

function lastSeen(): GradeRule | null {
  try {
    return gradeRuleSchema.safeParse(JSON.parse(localStorage.getItem(key) ?? "null")).data ?? null;
  } catch {
    return null;
  }
}
