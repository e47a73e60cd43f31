// Day or night: as the device has it, or as chosen here.

export const lamps = ["as the device", "day", "night"] as const;
export type Lamp = (typeof lamps)[number];

const kept = "ticking.lamp";

export function lampChosen(): Lamp {
  const found = localStorage.getItem(kept);
  return lamps.find((lamp) => lamp === found) ?? "as the device";
}

export function setLamp(lamp: Lamp): void {
  localStorage.setItem(kept, lamp);
  if (lamp === "as the device") delete document.documentElement.dataset.lamp;
  else document.documentElement.dataset.lamp = lamp;
}
