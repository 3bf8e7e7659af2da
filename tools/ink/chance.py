"""Seeded chance on a device: every draw of a batch comes from one generator."""

from typing import Any

import torch

#: Arrays of torch; the library is not installed with the project and has no types here.
Array = Any


class Chance:
    """Draws on one device, the same ones for the same seed and device."""

    def __init__(self, seed: int, device: str) -> None:
        self.device = device
        self._generator = torch.Generator(device)
        self._generator.manual_seed(seed)

    def between(self, low: float, high: float, *shape: int) -> Array:
        """Draw evenly between two numbers."""
        return low + (high - low) * torch.rand(*shape, generator=self._generator, device=self.device)

    def about(self, spread: float, *shape: int) -> Array:
        """Draw from the normal distribution around nought."""
        return spread * torch.randn(*shape, generator=self._generator, device=self.device)

    def below(self, most: int, *shape: int) -> Array:
        """Draw whole numbers from nought to one less than `most`."""
        return torch.randint(0, most, shape, generator=self._generator, device=self.device)

    def coin(self, share: float | Array, *shape: int) -> Array:
        """Say yes with this likelihood."""
        return self.between(0, 1, *shape) < share

    def pick(self, weights: list[float] | Array, *shape: int) -> Array:
        """Draw places of a list of weights, each as often as its weight says."""
        edges = torch.as_tensor(weights, dtype=torch.float32, device=self.device).cumsum(0)
        drawn = self.between(0, float(edges[-1]), *shape)
        return torch.searchsorted(edges, drawn).clamp(max=len(edges) - 1)
