"""What tests of several rooms share: Hypothesis strategies, and small spaces walked whole."""
