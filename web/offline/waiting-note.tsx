// Tells below the bar what waits on this device, and what of it needs its owner: a garment that was changed elsewhere, too, or a save that was refused.
import {useEffect, useState} from "react";
import {Link} from "wouter";
import {Button} from "../ui/button.tsx";
import {ProblemList} from "../ui/problem-list.tsx";
import type {Waiting} from "./kept.ts";
import {dropWaiting, waitingChanges, watchOutbox} from "./outbox.ts";

export function WaitingNote() {
  const [list, setList] = useState<readonly Waiting[]>([]);
  const [sure, setSure] = useState<number | null>(null);
  useEffect(() => {
    // A browser without a database has nothing that waits.
    const look = () => void waitingChanges().then(setList, () => undefined);
    look();
    return watchOutbox(look);
  }, []);
  if (list.length === 0) return null;
  const troubled = list.filter(({trouble}) => trouble);
  const plain = list.length - troubled.length;
  return (
    <aside className="newer" aria-label="Waiting on this device">
      {plain > 0 && (
        <p role="status">
          {plain === 1 ? "The change of " : `${plain} changes wait on this device for the server: `}
          {list.filter(({trouble}) => !trouble).slice(0, 5).map((one, i) => <span key={one.key}>{i > 0 && ", "}<Name one={one} /></span>)}
          {plain > 5 && ` and ${plain - 5} more`}
          {plain === 1 && " waits on this device for the server."}
        </p>
      )}
      {troubled.map((one) => (
        <div key={one.key}>
          <p>
            {one.trouble!.conflict ? <>Somebody else changed <Name one={one} />, too. Open it to put both changes together. </> : <><Name one={one} /> could not be saved. </>}
            {sure === one.key ? (
              <>What was written here is lost then. <Button look="quiet" onClick={() => void dropWaiting(one)}>Throw it away</Button> <Button look="quiet" onClick={() => setSure(null)}>Keep it</Button></>
            ) : (
              <Button look="quiet" onClick={() => setSure(one.key)}>Throw my change away</Button>
            )}
          </p>
          <ProblemList problems={one.trouble!.problems ?? []} />
        </div>
      ))}
    </aside>
  );
}

const Name = ({one: {garment, content}}: {one: Waiting}) => <Link href={`/examine/${garment}`}>{`garment ${content.garment.garment}`}</Link>;
