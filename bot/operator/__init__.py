"""What whoever runs the server does from the command line."""
