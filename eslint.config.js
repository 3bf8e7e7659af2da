// The law for browser code. Nothing is built: these files go to the browser as they stand.

import js from "@eslint/js";
import globals from "globals";

export default [
  { ignores: [".venv/", "node_modules/", "build/", "out/"] },
  js.configs.recommended,
  {
    linterOptions: { reportUnusedDisableDirectives: "error" },
    rules: {
      "max-lines": ["error", 400],
      "max-lines-per-function": ["error", { max: 60, IIFEs: true }],
      complexity: ["error", 15],
      curly: ["error", "multi-line"],
      eqeqeq: "error",
      "no-implicit-globals": "error",
      "no-restricted-properties": [
        "error",
        { property: "innerHTML", message: "Only the server's own markup goes in, and only through kit.js." },
        { property: "outerHTML", message: "Only the server's own markup goes in, and only through kit.js." },
        { property: "insertAdjacentHTML", message: "Only the server's own markup goes in, and only through kit.js." },
      ],
      "no-shadow": "error",
      "no-throw-literal": "error",
      "no-unused-expressions": "error",
      "no-var": "error",
      "object-shorthand": "error",
      "prefer-const": "error",
      "prefer-template": "error",
    },
  },
  {
    files: ["src/onewhole/web/static/*.js", "tools/try_page/*.js"],
    languageOptions: { sourceType: "module", globals: globals.browser },
  },
  {
    // It stands inside the page, which is opened from a disk: one script without imports.
    files: ["src/onewhole/writers/walkthrough/player.js"],
    languageOptions: { sourceType: "script", globals: globals.browser },
  },
  {
    files: ["tests/js/*.js", "tools/*.js", "eslint.config.js"],
    languageOptions: { sourceType: "module", globals: globals.node },
  },
];
