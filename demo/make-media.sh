#!/bin/bash
# Makes the recordings and photos of the demo garage anew from garage.json and scenes/.
#
#   demo/make-media.sh recordings   voices only (seconds)
#   demo/make-media.sh photos       pictures only (half an hour)
#   demo/make-media.sh transcripts  what the program hears in the recordings (seconds)
#   demo/make-media.sh              all three
#
# The results are committed, so nobody needs to run this to build, test or use the program.
# Debian packages: flite jq povray imagemagick; transcripts need the .NET SDK.
set -euo pipefail
cd "$(dirname "$0")"

need() {
  command -v "$1" > /dev/null || { echo "$1 is missing: apt-get install $2" >&2; exit 1; }
}

# One WAV for each recording of the story, in its speaker's voice: 16 kHz, mono, 16-bit, as flite writes it.
make_recordings() {
  need flite flite
  need jq jq
  mkdir -p recordings
  jq -r '. as $story | .recordings[]
    | [.file, (.speaker as $name | $story.people[] | select(.name == $name) | .voice), .words] | @tsv' garage.json |
    while IFS=$'\t' read -r file voice words; do
      flite -voice "$voice" -t "$words" -o "recordings/$file"
      echo "recordings/$file"
    done
}

# A ray-traced scene becomes a photo: sharp in the middle distance, softer above and below, a little grain and fall-off
# towards the corners.
develop() {
  convert "$1" \
    \( -size 16x840 gradient:white-black -function Polynomial 4,-4,1 -level 25%,100% -resize '1120x840!' \) \
    -compose Blur -define compose:args=3x3 -composite \
    \( -size 1120x840 radial-gradient:white-gray72 \) -compose Multiply -composite \
    -modulate 118,106 -attenuate 0.22 -seed 1974 +noise Gaussian \
    -strip -sampling-factor 4:2:0 -quality 82 "$2"
}

make_photos() {
  need povray povray
  need convert imagemagick
  mkdir -p photos
  local work
  work=$(mktemp -d)
  for scene in scenes/*.pov; do
    local name
    name=$(basename "$scene" .pov)
    povray "+I$scene" +Lscenes "+O$work/$name.png" +W1120 +H840 +A0.3 +R2 +WT1 -D > "$work/$name.log" 2>&1 ||
      { tail -20 "$work/$name.log" >&2; exit 1; }
    develop "$work/$name.png" "photos/$name.jpg"
    echo "photos/$name.jpg"
  done
  rm -rf "$work"
}

# What the speech model hears in the recordings, so that the demo opens without listening to them all.
make_transcripts() {
  need jq jq
  need dotnet dotnet-sdk-10.0
  local model sum
  read -r sum model < ../src/InspectLog.Dictation/model/SHA256SUMS  # its first line is the Whisper model
  dotnet run --project ../src/InspectLog.App -- transcribe "$PWD"/recordings/*.wav --json |
    jq --slurp --arg model "$model" --arg sum "$sum" \
      '{model: $model, modelSha256: $sum, recordings: map(.file |= sub(".*/"; ""))}' > transcripts.json
  echo transcripts.json
}

case "${1:-all}" in
  recordings) make_recordings ;;
  photos) make_photos ;;
  transcripts) make_transcripts ;;
  all) make_recordings; make_photos; make_transcripts ;;
  *) echo "usage: $0 [recordings|photos|transcripts]" >&2; exit 2 ;;
esac
sha256sum recordings/*.wav photos/*.jpg > SHA256SUMS
