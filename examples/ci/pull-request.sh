#!/bin/sh
# For a pull request: what changes in meaning against the branch it goes to, as Markdown for a comment, and a review page to keep with the build.
# Copy it, and change `jobs` to the folder your jobs lie in. Wants hotroom on the path, and a clone that holds both branches.
set -eu
base=${1:-main}
hotroom diff --format markdown --fail-on never "$base...HEAD" -- jobs > changes.md
hotroom review jobs --format html --since "$base" --fail-on never --out review.html
hotroom diff --fail-on errors "$base...HEAD" -- jobs
