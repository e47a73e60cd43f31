// The address of a book: its id, and the edition unless it is the one in use.
import {useParams} from "wouter";
import {BookScreen} from "./book-screen.tsx";

export function BookRoute() {
  const {id = "", edition} = useParams<{id: string; edition?: string}>();
  return <BookScreen key={`${id} ${edition}`} id={id} edition={edition === undefined || !/^\d+$/.test(edition) ? null : Number(edition)} />;
}
