import { writeTraveler } from "@bitwright/traveler";
import { Button, Header, Menu, MenuItem, MenuSection, MenuTrigger, Popover } from "react-aria-components";
import { headOf } from "../job/job-document.ts";
import { openJob } from "../job/open-job.ts";
import { openDialog } from "./opened.ts";
import { settings, type Theme } from "./settings.ts";

const THEMES: readonly { readonly id: Theme; readonly words: string }[] = [
  { id: "system", words: "Normal, as the system has it" },
  { id: "sun", words: "In the sun" },
  { id: "dark", words: "Dark" },
];

/** What is asked for less often: versions, the file, the keys, the look of the screen. */
export function MoreMenu({ ofJob }: { readonly ofJob: boolean }) {
  const theme = settings((state) => state.theme);
  return (
    <MenuTrigger>
      <Button className="button">More</Button>
      <Popover className="popover" placement="bottom end">
        <Menu className="menu" aria-label="More">
          {ofJob ? (
            <MenuSection className="menu-part" aria-label="The job">
              <MenuItem onAction={() => openDialog("versions")}>Versions</MenuItem>
              <MenuItem onAction={downloadFile}>Download the traveler file</MenuItem>
              <MenuItem onAction={() => openDialog("keys")}>Keys</MenuItem>
            </MenuSection>
          ) : null}
          <MenuSection
            className="menu-part"
            selectionMode="single"
            disallowEmptySelection
            selectedKeys={[theme]}
            onSelectionChange={(keys) => {
              const [chosen] = keys === "all" ? [] : keys;
              if (chosen !== undefined) settings.setState({ theme: chosen as Theme });
            }}
          >
            <Header>Screen</Header>
            {THEMES.map(({ id, words }) => (
              <MenuItem key={id} id={id}>
                {({ isSelected }) => (
                  <>
                    {isSelected ? "● " : "○ "}
                    {words}
                  </>
                )}
              </MenuItem>
            ))}
          </MenuSection>
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}

/** Hands the traveler out as its file, as entered. */
function downloadFile(): void {
  const { document: traveler } = openJob.getState();
  const { name, number } = headOf(traveler);
  const words = [number, name].filter(Boolean).join(" ");
  const text = writeTraveler(traveler as Parameters<typeof writeTraveler>[0]);
  const address = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = `${words.toLowerCase().replace(/[^a-z0-9]+/g, "-")}.traveler.json`;
  link.click();
  URL.revokeObjectURL(address);
}
