// Fills a code field without typing: with the camera, or from a photo of the sheet.
import { useEffect, useRef, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { Dialog, DialogTrigger } from 'react-aria-components/Dialog';
import { FileTrigger } from 'react-aria-components/FileTrigger';
import { Modal, ModalOverlay } from 'react-aria-components/Modal';
import '../look/scanning.css';
import type { Planner } from '../planning/planner.ts';
import { CameraPanel } from './camera-panel.tsx';
import { type QrReader, startQrReader } from './qr-reader.ts';
import { readPhoto } from './read-photo.ts';
import { words } from './words.ts';

export interface ScanCodeProps {
  readonly planner: Planner;
  /** What is in the field; once it changes, what was said of a scan is out of date. */
  readonly code: string;
  readonly onCode: (code: string) => void;
}

export function ScanCode({ planner, code, onCode }: ScanCodeProps) {
  const [said, setSaid] = useState({ about: code, text: '' });
  if (said.about !== code) setSaid({ about: code, text: '' });
  const [isOpen, setIsOpen] = useState(false);
  const say = (text: string) => setSaid({ about: code, text });
  const take = (found: string, text: string) => {
    setSaid({ about: found, text });
    onCode(found);
  };
  const latest = useRef<QrReader>(undefined);
  useEffect(() => () => latest.current?.stop(), []);
  const choosePhoto = async (photo: File | undefined) => {
    if (photo === undefined) return;
    latest.current?.stop();
    const reader = startQrReader();
    latest.current = reader;
    say(words.readingPhoto);
    const read = await readPhoto(photo, reader, planner);
    reader.stop();
    if (latest.current !== reader) return;
    if (read.code === undefined) say(read.words);
    else take(read.code, read.words);
  };
  return (
    <div className="scan">
      <div className="row">
        <DialogTrigger isOpen={isOpen} onOpenChange={setIsOpen}>
          <Button className="plain">{words.camera}</Button>
          <ModalOverlay className="over" isDismissable>
            <Modal className="drawer">
              <Dialog className="camera">
                <CameraPanel
                  planner={planner}
                  onCode={(found) => {
                    setIsOpen(false);
                    take(found, words.readByCamera);
                  }}
                  onOutOfSight={() => {
                    setIsOpen(false);
                    say(words.outOfSight);
                  }}
                  onClose={() => setIsOpen(false)}
                />
              </Dialog>
            </Modal>
          </ModalOverlay>
        </DialogTrigger>
        <FileTrigger
          acceptedFileTypes={['image/*']}
          onSelect={(files) => void choosePhoto(files?.[0])}
        >
          <Button className="plain">{words.photo}</Button>
        </FileTrigger>
      </div>
      <p className="help">{words.privacy}</p>
      <p className="scan-said" aria-live="polite">
        {said.text}
      </p>
    </div>
  );
}
