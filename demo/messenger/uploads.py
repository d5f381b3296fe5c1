"""Pictures and documents sent by a bot: found in the request, checked, stored.

Sizes are the platform's for bots: 10 MB for a photo, 50 MB for another file, 20 MB to download.
"""

from collections.abc import Callable

from demo.messenger.chats import File, World
from demo.messenger.checks import Params, Upload
from demo.messenger.refusals import Refused, bad_request

MAX_PHOTO = 10 * 1024 * 1024
MAX_FILE = 50 * 1024 * 1024
MAX_DOWNLOAD = 20 * 1024 * 1024


def photo(world: World, params: Params) -> File:
    """The `photo` of a request, uploaded or referenced by id."""
    return _file(world, params, "photo", MAX_PHOTO, _measured)


def document(world: World, params: Params) -> File:
    """The `document` of a request, uploaded or referenced by id."""
    return _file(world, params, "document", MAX_FILE, lambda content: (0, 0))


def _file(world: World, params: Params, name: str, most: int, measure: Callable[[bytes], tuple[int, int]]) -> File:
    upload: Upload | None = params.files.get(name)
    reference = params.text(name) or ""
    if upload is None and reference.startswith("attach://"):
        upload = params.files.get(reference.removeprefix("attach://"))
        if upload is None:
            raise bad_request(f"there is no {name} in the request")
    if upload is None:
        if not reference:
            raise bad_request(f"there is no {name} in the request")
        if reference not in world.files:
            raise bad_request("wrong remote file identifier specified: Wrong string length")
        return world.files[reference]
    if not upload.content:
        raise bad_request("file must be non-empty")
    if len(upload.content) > most:
        raise Refused(413, "Request Entity Too Large")
    width, height = measure(upload.content)
    return world.keep_file(upload.content, upload.filename, upload.mime_type, width, height)


def _measured(content: bytes) -> tuple[int, int]:
    """Width and height in pixels. Raises: Refused if it is not a picture, or too large or too narrow."""
    if content.startswith(b"\x89PNG\r\n\x1a\n") and len(content) >= 24:
        width = int.from_bytes(content[16:20], "big")
        height = int.from_bytes(content[20:24], "big")
    elif content.startswith(b"\xff\xd8\xff"):
        width, height = _jpeg_size(content)
    else:
        raise bad_request("IMAGE_PROCESS_FAILED")
    small, large = sorted((width, height))
    if not small or width + height > 10_000 or large > 20 * small:
        raise bad_request("PHOTO_INVALID_DIMENSIONS")
    return width, height


def _jpeg_size(content: bytes) -> tuple[int, int]:
    """Walk a JPEG's segments to its frame header (ITU-T T.81, B.2.2)."""
    at = 2
    while at + 9 <= len(content) and content[at] == 0xFF:
        marker = content[at + 1]
        if 0xC0 <= marker <= 0xCF and marker not in (0xC4, 0xC8, 0xCC):
            height = int.from_bytes(content[at + 5 : at + 7], "big")
            return int.from_bytes(content[at + 7 : at + 9], "big"), height
        at += 2 + int.from_bytes(content[at + 2 : at + 4], "big")
    raise bad_request("IMAGE_PROCESS_FAILED")
