// A part of the photo looked at closely: larger, under a lens, with more contrast or in one colour alone. For the eye only.
import {useEffect, useRef, useState, type PointerEvent} from "react";
import {grown} from "../../reader/image/plane.ts";
import type {Quad} from "../../reader/model.ts";
import {Button} from "../ui/button.tsx";
import {Dialog} from "../ui/dialog.tsx";
import {channels, noAids, type Aids} from "./aids.ts";
import {drawCrop} from "./draw-crop.ts";
import type {Size} from "./outline.ts";
import {openBlob, originalOf, pixelsOf, type PhotoPixels} from "./photo-pixels.ts";

export interface LookProps {
  readonly title: string;
  readonly photo: string;
  readonly size: Size | null;
  readonly quad: Quad;
  readonly aids: Aids;
  onAids(aids: Aids): void;
  onClose(): void;
}

const lensSide = 150;
const lensTimes = 2.5;

export function LookSheet({title, photo, size, quad, aids, onAids, onClose}: LookProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const lens = useRef<HTMLCanvasElement>(null);
  const [pixels, setPixels] = useState<PhotoPixels | null>(null);
  const [tall, setTall] = useState(110);
  const [at, point] = useState<{x: number; y: number} | null>(null);
  useEffect(() => {
    let here = true;
    const found = (one: PhotoPixels | null) => here && one && setPixels(one);
    void pixelsOf(photo, size).then((copy) => found(copy));
    // Every pixel there is, once it is here.
    void originalOf(photo).then((blob) => blob && openBlob(blob).then(found));
    return () => void (here = false);
  }, [photo]);
  const dense = Math.min(2, devicePixelRatio || 1);
  useEffect(() => void (pixels && drawCrop(canvas.current!, pixels, grown(quad, 0.5, 0.35), tall * dense, aids)), [pixels, quad, tall, aids]);
  useEffect(() => {
    if (!at || !canvas.current || !lens.current) return;
    const context = lens.current.getContext("2d")!;
    const part = (lensSide * dense) / lensTimes;
    context.imageSmoothingEnabled = true;
    context.fillRect(0, 0, lens.current.width, lens.current.height);
    context.drawImage(canvas.current, at.x * dense - part / 2, at.y * dense - part / 2, part, part, 0, 0, lens.current.width, lens.current.height);
  });
  const follow = (event: PointerEvent) => {
    const {left, top} = canvas.current!.getBoundingClientRect();
    point({x: event.clientX - left, y: event.clientY - top});
  };
  const tick = (part: "stretch" | "even" | "negative", words: string) => <label><input type="checkbox" checked={aids[part]} onChange={({target}) => onAids({...aids, [part]: target.checked})} />{words}</label>;
  return (
    <Dialog title={title} wide onClose={onClose}>
      <div className="look" tabIndex={0} role="group" aria-label="The picture; it can be scrolled">
        <div className="look-ground" onPointerMove={follow} onPointerDown={follow} onPointerLeave={() => point(null)}>
          <canvas ref={canvas} role="img" aria-label={title} style={{height: tall}} />
          {at && <canvas ref={lens} className="lens" aria-hidden="true" width={lensSide * dense} height={lensSide * dense} style={{left: at.x, top: at.y, width: lensSide, height: lensSide}} />}
        </div>
      </div>
      <div className="look-ways">
        <label>Larger <input type="range" min={50} max={330} step={10} value={tall} onChange={({target}) => setTall(Number(target.value))} /></label>
        <label>Show <select value={aids.channel} onChange={({target}) => onAids({...aids, channel: target.value as Aids["channel"]})}>
          {channels.map((channel) => <option key={channel} value={channel}>{channel === "colours" ? "its colours" : channel === "grey" ? "grey only" : `${channel} alone`}</option>)}
        </select></label>
        {tick("stretch", "more contrast")}
        {tick("even", "even light")}
        {tick("negative", "dark for light")}
        <Button look="quiet" onClick={() => onAids(noAids)}>As it is</Button>
      </div>
      <p className="quiet">For your eyes only: the reader is given the photo as it was taken. Try one colour alone: faded ink may show in one and not in another.</p>
    </Dialog>
  );
}
