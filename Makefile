# The project's commands. Each makes `.venv` and `node_modules` when it needs one that is missing or older than the locks.

PYTHON ?= python3
VENV := .venv
BIN := $(VENV)/bin
READY := $(VENV)/ready
NODE := node_modules/ready
CODE := $(wildcard src tests bench lab tools examples)

# Python keeps what it compiles, whatever the machine says: the tests start the program many times.
export PYTHONDONTWRITEBYTECODE :=

.PHONY: run serve test walk lint lint-types lint-rest format docs sbom audit-dependencies bench lab lock clean \
	bundle bundle-check dist dist-check try-page site release

run: $(READY)
	$(BIN)/onewhole night examples/room12 --to out
	$(BIN)/onewhole film examples/room12/sheet.txt --to out --voice synthetic

# The browser door: prints the address to open; Ctrl-C stops it.
serve: $(READY)
	$(BIN)/onewhole serve

# The checks that read the code come first, so that pytest has the last word. `make test MORE=1`, which CI runs, tries
# more examples, problems and pages of the same: tests/README.md.
test: lint
	npm test --silent
	ONEWHOLE_MORE=$(MORE) $(BIN)/pytest -n 3 --dist worksteal

# Every problem of each topic's small space by every strategy, twenty thousand workings spoken and read back, every
# pattern's answer by both roads, every skill composed with thirty seeds, a million texts through the reader, every
# system call of keeping failed, a million damaged files of a class read, a million hostile answers marked and
# planned, the papers of a whole class typed, pages with marks laid closest, and new examples of every law. It takes
# long.
walk: $(READY)
	ONEWHOLE_WHOLE_WALK=1 ONEWHOLE_FUZZ=1000000 ONEWHOLE_DAMAGED=1000000 ONEWHOLE_ANSWERS=1000000 $(BIN)/pytest -n 2 -rP \
		tests/agreement tests/desk/page/test_compose_skills.py tests/statements/test_fuzz.py tests/faults \
		tests/desk/keep/test_locked_backup.py \
		tests/laws/test_told_kept.py tests/web/test_restore_while_marking.py tests/store/test_damaged.py \
		tests/laws/test_hostile_nights.py tests/marking/grouping/test_reasons.py tests/browser tests/web/test_sign_in_page.py tests/writers \
		tests/store/test_kills.py tests/presses/test_blank_pages.py
	$(BIN)/pytest -n 2 --hypothesis-profile=explore tests/laws tests/number tests/statements tests/notations

# The two halves side by side: the types of the Python code, and everything else.
lint: $(READY) $(NODE)
	@$(MAKE) --jobs=2 --output-sync=target --no-print-directory lint-types lint-rest

lint-types:
	$(BIN)/mypy --num-workers 2

lint-rest:
	$(BIN)/ruff check $(CODE)
	$(BIN)/ruff format --check $(CODE)
	$(BIN)/lint-imports
	npm run --silent lint
	npm run --silent types

format: $(READY)
	$(BIN)/ruff check --fix $(CODE)
	$(BIN)/ruff format $(CODE)

# The pages that are made from the code, and the sessions and drawings in the others. Read the difference.
docs: sbom
	$(BIN)/python -m tools.docs
	ONEWHOLE_ACCEPT=1 $(BIN)/pytest -q tests/commands tests/house/test_docs.py tests/house/test_architecture.py

# What a release brings along of others, as data (CycloneDX) and as a page with the licences.
sbom: $(READY)
	$(BIN)/python -m tools.sbom
	$(BIN)/python -m tools.notices

# The folder that a teacher unpacks and starts by a double-click, in build/bundle; `make bundle ARCHIVE=--archive` packs it.
bundle: $(READY)
	$(BIN)/python -m tools.bundle $(ARCHIVE)

# Builds it and tries it where there is no Python: a night and a film by hand in Chromium.
bundle-check: bundle
	ONEWHOLE_BUNDLE=$(CURDIR)/build/bundle/onewhole $(BIN)/pytest -q tests/bundle/test_bundle.py

# What `pipx install` and `uv tool install` take, and the source it is made from, in dist.
dist: $(READY)
	rm -rf dist
	$(BIN)/python -m build --no-isolation --outdir dist >/dev/null
	@ls -l dist

# Installs the wheel outside of this folder with what it needs, by the lock, and does a night with it.
dist-check: dist
	ONEWHOLE_DIST=$(CURDIR)/dist $(BIN)/pytest -q tests/bundle/test_dist.py

# The page "Try and check", which needs no program: a folder for any server of files, in build/try-page.
try-page: $(READY) $(NODE)
	$(BIN)/python -m tools.try_page

# The docs as a site, with pages of the code, in build/site.
site: $(READY)
	$(BIN)/python -m tools.site

# Makes a release of what stands in changelog.d: `make release VERSION=0.2.0`. It commits nothing.
release: $(READY)
	$(BIN)/python -m tools.release $(VERSION)

# Asks the index of packages for known faults of what is locked; ends with an error where it does not tell.
audit-dependencies: $(READY)
	$(BIN)/python -m tools.audit_dependencies

bench: $(READY)
	$(BIN)/python bench/all.py

# Measures the diagnosis on invented classes and writes the table into docs/lab.md; some minutes.
lab: $(READY)
	$(BIN)/python -m lab --write

# Every file that pip fetches must have a checksum of the locks. What builds comes first: a package that has no wheel is
# built with it, and so is the project itself, which is a folder and has no checksum.
$(READY): requirements-build.lock requirements.lock requirements-dev.lock pyproject.toml
	@$(PYTHON) -c 'import sys; sys.exit(sys.version_info < (3, 11))' || { \
		echo 'onewhole needs Python 3.11 or newer. Name one with: make PYTHON=python3.11'; exit 1; }
	@$(PYTHON) -c 'import ensurepip, venv' 2>/dev/null || { \
		echo 'onewhole needs the "venv" part of Python. On Debian: apt-get install python3-venv'; exit 1; }
	$(PYTHON) -m venv $(VENV)
	$(BIN)/python -m pip install --quiet --require-hashes --requirement requirements-build.lock
	$(BIN)/python -m pip install --quiet --require-hashes --no-build-isolation \
		--requirement requirements.lock --requirement requirements-dev.lock
	$(BIN)/python -m pip install --quiet --no-deps --no-build-isolation --no-index --editable .
	@touch $@

# What reads the browser code; nothing is built with it, and nobody who only uses the program needs it.
$(NODE): package.json package-lock.json
	@command -v npm >/dev/null || { \
		echo 'The checks of the browser code need Node 18 or newer, with npm. On Debian: apt-get install nodejs npm'; exit 1; }
	npm ci --silent
	@touch $@

# Pins again what pyproject.toml and package.json ask for: `make lock`, or `make lock UPGRADE=--upgrade` for newer releases.
# The locks hold names, versions and the checksums of every file of a release, for all machines: no host, no path.
COMPILE = $(BIN)/pip-compile --quiet --strip-extras --allow-unsafe --no-header --no-annotate --generate-hashes \
	--no-emit-index-url --no-emit-find-links --no-emit-trusted-host $(UPGRADE)
lock: $(READY)
	$(COMPILE) --only-build-deps --build-deps-for editable --output-file requirements-build.lock pyproject.toml
	$(COMPILE) --output-file requirements.lock pyproject.toml
	$(COMPILE) --extra dev --constraint requirements.lock --output-file requirements-dev.lock pyproject.toml
	npm install --silent --package-lock-only
	node tools/plain_lock.js

clean:
	rm -rf $(VENV) node_modules out build dist .hypothesis .import_linter_cache .mypy_cache .pytest_cache .ruff_cache
	rm -rf src/*.egg-info
