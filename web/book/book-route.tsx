// The addresses of a book: to be read (an edition, or the one in use), to be edited, two editions compared.
import {useParams, useSearch} from "wouter";
import {BookScreen} from "./book-screen.tsx";
import {CompareScreen} from "./compare-screen.tsx";
import {EditScreen} from "./edit-screen.tsx";

export function BookRoute() {
  const {id = "", edition} = useParams<{id: string; edition?: string}>();
  return <BookScreen key={`${id} ${edition}`} id={id} edition={edition === undefined || !/^\d+$/.test(edition) ? null : Number(edition)} />;
}

export function EditRoute() {
  const {id = ""} = useParams<{id: string}>();
  const copy = new URLSearchParams(useSearch()).get("copy");
  return <EditScreen key={`${id} ${copy}`} id={id} copy={copy} />;
}

export function CompareRoute() {
  const {id = "", from = "", to = ""} = useParams<{id: string; from: string; to: string}>();
  return <CompareScreen key={`${id} ${from} ${to}`} id={id} from={from} to={to} />;
}
