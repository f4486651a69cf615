'use client';

import { useId, useState } from 'react';
import { labelText, readLabelCode } from '@/lib/plant/label-code';
import { CameraView } from './camera-view';
import { codesInPhoto } from './code-in-photo';
import { PhotoInput } from './photo-input';
import { TypedCode } from './typed-code';
import { useCamera } from './use-camera';
import { useFrames } from './use-frames';
import { useReader } from './use-reader';

const NO_READER = 'What reads codes could not be fetched: there is no network. Type the code.';
const OTHER_CODE = 'That code is not of a label of this register.';

/**
 * Three ways to a label's code, all there at once: the camera, a photograph, and typing it. It imports nothing of the
 * server or of Next, since the phone's own pages hold it too.
 */
export function Scanner({
  readerPath,
  onCode,
  onLeave,
}: {
  /** Where this server has zxing_reader.wasm, for browsers that read no codes themselves. */
  readerPath: string;
  /** The code, eight signs, as soon as one is read. */
  onCode: (code: string) => void;
  onLeave?: () => void;
}) {
  const id = useId();
  const camera = useCamera();
  const reader = useReader(readerPath);
  const [says, setSays] = useState<string | null>(null);
  const [found, setFound] = useState<string | null>(null);

  const take = (code: string) => {
    camera.close();
    setSays(null);
    setFound(code);
    onCode(code);
  };
  const onCodes = (texts: string[]) => {
    const codes = texts.map(readLabelCode).flatMap((read) => (read.ok ? [read.value] : []));
    const [code] = codes;
    if (code === undefined) return setSays(OTHER_CODE);
    if (new Set(codes).size > 1) return setSays('There is more than one label: come nearer to one.');
    take(code);
  };
  const onNoReader = () => {
    camera.close();
    setSays(NO_READER);
  };
  useFrames(camera, reader, { onCodes, onNoReader });

  const open = () => {
    setSays(null);
    setFound(null);
    camera.open();
  };
  const onPhoto = async (file: File) => {
    setFound(null);
    setSays('Looking for a code in the photograph.');
    let texts: string[] | null;
    try {
      texts = await codesInPhoto(file, await reader());
    } catch {
      return setSays(NO_READER);
    }
    if (texts === null) return setSays('That file is no picture that this browser shows.');
    if (texts.length === 0)
      return setSays('No code was found in the photograph. Come nearer, straight on, without glare.');
    onCodes(texts);
  };

  return (
    <div className="scan">
      <CameraView camera={{ ...camera, open }} />
      <p className="scan-says" role="status">
        {found === null ? says : `Label ${labelText(found)} is read.`}
      </p>
      <PhotoInput id={`${id}photo`} onPhoto={onPhoto} />
      <TypedCode id={`${id}code`} onCode={take} />
      {onLeave !== undefined && (
        <button
          type="button"
          className="second"
          onClick={() => {
            camera.close();
            onLeave();
          }}
        >
          Leave
        </button>
      )}
    </div>
  );
}
