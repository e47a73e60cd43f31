// The tape somebody measures with, inches or centimetres; remembered on this device.
import {useState} from "react";
import type {TypedLength} from "../../state/model.ts";

type Unit = TypedLength["unit"];
const key = "ticking.tape";

export function useTapeUnit(): readonly [Unit, (unit: Unit) => void] {
  const [unit, setUnit] = useState<Unit>(() => (localStorage.getItem(key) === "cm" ? "cm" : "in"));
  return [unit, (next) => (localStorage.setItem(key, next), setUnit(next))];
}
