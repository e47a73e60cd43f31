// Adds a kind to the rule by its name.
import {useState} from "react";
import {Button} from "../ui/button.tsx";

export function AddKind({label, onAdd}: {readonly label: string; onAdd(name: string): void}) {
  const [name, setName] = useState("");
  return (
    <form className="add-kind" onSubmit={(event) => {
      event.preventDefault();
      if (name.trim() === "") return;
      onAdd(name.trim());
      setName("");
    }}>
      <input aria-label={label} placeholder={label} maxLength={100} value={name} onChange={({target}) => setName(target.value)} />
      <Button type="submit" disabled={name.trim() === ""}>Add</Button>
    </form>
  );
}
