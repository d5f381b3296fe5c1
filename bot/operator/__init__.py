"""Command-line tools for whoever runs the server."""
