// A field to drop photos on or press: chosen from files, or straight from the camera of a phone.
export interface PickPhotosProps {
  readonly words: string;
  readonly camera?: boolean;
  onFiles(files: readonly File[]): void;
}

export function PickPhotos({words, camera = false, onFiles}: PickPhotosProps) {
  return (
    <label className="photo-add">
      {words}
      <input
        type="file"
        className="unseen"
        accept="image/jpeg,image/png,image/webp,image/avif"
        {...(camera ? {capture: "environment" as const} : {multiple: true})}
        onChange={({target}) => {
          onFiles([...(target.files ?? [])]);
          target.value = "";
        }}
      />
    </label>
  );
}
