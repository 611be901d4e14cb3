#!/bin/sh
# For every push: the shape of the job files, and their findings in a file that code hosts show inline.
# Copy it, and change `jobs` to the folder your jobs lie in. Wants hotroom on the path.
set -eu
hotroom fmt --check jobs
hotroom check jobs --format sarif --fail-on never > findings.sarif
hotroom check jobs --fail-on error
