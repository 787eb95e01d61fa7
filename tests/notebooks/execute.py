"""Runs a notebook from top to bottom in a kernel and writes it with its outputs: execute.py FROM TO KERNEL."""
import sys
from queue import Empty

import nbformat
from nbclient import NotebookClient
from nbclient.util import ensure_async


class PatientClient(NotebookClient):
    """Reads on after a kernel has said that it is idle: that of Deno sends some outputs only then."""

    async def _async_poll_output_msg(self, parent_msg_id, cell, cell_index):
        await super()._async_poll_output_msg(parent_msg_id, cell, cell_index)
        while True:
            try:
                message = await ensure_async(self.kc.iopub_channel.get_msg(timeout=0.5))
            except Empty:
                return
            if message["parent_header"].get("msg_id") == parent_msg_id:
                self.process_message(message, cell, cell_index)


source, target, kernel = sys.argv[1:]
notebook = nbformat.read(source, as_version=4)
PatientClient(notebook, kernel_name=kernel, timeout=120, record_timing=False).execute()
nbformat.write(notebook, target)
