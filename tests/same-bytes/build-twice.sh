#!/usr/bin/env bash
# Builds the committed state twice, in two folders of different names, and compares the bytes of our assemblies (and, where they could be made,
# of the machine code of ours). Names each file that differs; ends with 1 when one does.
set -euo pipefail
cd "$(dirname "$0")/../.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
for folder in first "second place"; do
  mkdir "$work/$folder"
  git archive HEAD | tar -x -C "$work/$folder"
  dotnet build "$work/$folder/src/NotebookKit.Runner" -c Release --nologo -v q -p:LivePage="${LIVE_PAGE:-false}" -p:MachineCode="${MACHINE_CODE:-false}"
done
same=0
differs=0
while read -r file; do
  if cmp -s "$work/first/$file" "$work/second place/$file"; then same=$((same + 1)); else echo "differs: $file"; differs=$((differs + 1)); fi
done < <(cd "$work/first" && find src/NotebookKit.Runner/bin/Release src/NotebookKit.Live/obj/Release -name 'NotebookKit*.dll' -o -name 'NotebookKit*.pdb' -o -name live.html | sort)
echo "$same files have the same bytes, $differs differ"
[ "$same" -gt 0 ] && [ "$differs" = 0 ]
