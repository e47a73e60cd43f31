// The photo of a label with its outline: four corners to be moved by hand, by thumb or by arrow keys.
import {useEffect, useRef, useState, type KeyboardEvent, type PointerEvent} from "react";
import type {Corner, Quad} from "../../reader/model.ts";
import {CornerLens} from "./corner-lens.tsx";
import {drawTurned} from "./draw-turned.ts";
import {fromTurned, moveCorner, toTurned, turnedSize, type Turn} from "./outline.ts";
import type {PhotoPixels} from "./photo-pixels.ts";

export interface StageProps {
  readonly pixels: PhotoPixels;
  readonly turn: Turn;
  readonly outline: Quad;
  /** Where rows were read. */
  readonly rows: readonly Quad[];
  onOutline(outline: Quad): void;
}

const names = ["Top left", "Top right", "Bottom right", "Bottom left"] as const;
const steps: Readonly<Record<string, Corner>> = {ArrowLeft: {x: -1, y: 0}, ArrowRight: {x: 1, y: 0}, ArrowUp: {x: 0, y: -1}, ArrowDown: {x: 0, y: 1}};
/** How far an arrow key moves a corner, as a part of the longer side. */
const step = 1 / 200;

export function PhotoStage({pixels, turn, outline, rows, onOutline}: StageProps) {
  const {size} = pixels;
  const stage = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const [held, hold] = useState<{index: number; outline: Quad} | null>(null);
  const {width, height} = turnedSize(size, turn);
  useEffect(() => drawTurned(canvas.current!, pixels, turn), [pixels, turn]);
  const now = held?.outline ?? outline;
  const shown = now.map((corner) => toTurned(corner, size, turn));
  const points = (quad: readonly Corner[]) => quad.map(({x, y}) => `${x.toFixed(1)},${y.toFixed(1)}`).join(" ");

  const pointAt = ({clientX, clientY}: PointerEvent): Corner => {
    const {left, top, width: wide, height: high} = stage.current!.getBoundingClientRect();
    return fromTurned({x: ((clientX - left) / wide) * width, y: ((clientY - top) / high) * height}, size, turn);
  };
  const move = (event: PointerEvent) => held && hold({index: held.index, outline: moveCorner(held.outline, held.index, pointAt(event), size)});
  const letGo = () => {
    if (held) onOutline(held.outline);
    hold(null);
  };
  const press = (event: KeyboardEvent, index: number) => {
    const by = steps[event.key];
    if (!by) return;
    event.preventDefault();
    const far = Math.max(width, height) * step * (event.shiftKey ? 5 : 1);
    const {x, y} = shown[index]!;
    onOutline(moveCorner(outline, index, fromTurned({x: x + by.x * far, y: y + by.y * far}, size, turn), size));
  };
  return (
    <div className="stage" ref={stage} style={{aspectRatio: `${width} / ${height}`, width: `min(100% - 8px, calc(58dvh * ${width / height}))`}}>
      <canvas ref={canvas} role="img" aria-label="The photo of the label" />
      <svg viewBox={`0 0 ${width} ${height}`} preserveAspectRatio="none" aria-hidden="true">
        <path className="stage-shade" fillRule="evenodd" d={`M0 0H${width}V${height}H0Z M${points(shown)}Z`} />
        {rows.map((quad, i) => <polygon key={i} className="stage-row" points={points(quad.map((corner) => toTurned(corner, size, turn)))} />)}
        <polygon className="stage-outline" points={points(shown)} />
      </svg>
      {shown.map(({x, y}, i) => (
        <button
          key={i}
          type="button"
          className={held?.index === i ? "corner held" : "corner"}
          aria-label={`${names[i]} corner of the label; arrow keys move it, with shift further`}
          style={{left: `${(x / width) * 100}%`, top: `${(y / height) * 100}%`}}
          onPointerDown={(event) => {
            event.currentTarget.setPointerCapture(event.pointerId);
            hold({index: i, outline});
          }}
          onPointerMove={move}
          onPointerUp={letGo}
          onPointerCancel={() => hold(null)}
          onKeyDown={(event) => press(event, i)}
        />
      ))}
      {held && <CornerLens pixels={pixels} turn={turn} at={now[held.index]!} opposite={shown[held.index]!.x < width / 2 ? "right" : "left"} />}
    </div>
  );
}
