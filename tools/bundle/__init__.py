"""The folder that a teacher unpacks and starts by a double-click: built, listed, with its licences."""
