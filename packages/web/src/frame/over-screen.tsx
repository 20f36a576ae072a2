import type { ReactNode } from "react";
import { Dialog, Heading, Modal, ModalOverlay } from "react-aria-components";
import { closeDialog, type DialogName, opened } from "./opened.ts";

/** A dialog over the screen, with its heading; Esc and a tap beside it close it. */
export function OverScreen(props: {
  readonly name: DialogName;
  readonly heading: string;
  readonly children: ReactNode;
}) {
  const isOpen = opened(({ dialog }) => dialog === props.name);
  return (
    <ModalOverlay className="veil" isOpen={isOpen} isDismissable onOpenChange={(is) => is || closeDialog()}>
      <Modal>
        <Dialog className="dialog">
          <Heading slot="title" level={2}>
            {props.heading}
          </Heading>
          {isOpen ? props.children : null}
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
