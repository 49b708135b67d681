"""The Jupyter project's own kernel tests, run against our kernel. Needs python3-jupyter-kernel-test; JUPYTER_PATH must hold the kernelspec."""

import unittest

import jupyter_kernel_test


class NotebookKitKernel(jupyter_kernel_test.KernelTests):
    kernel_name = "notebookkit"
    language_name = "C#"
    file_extension = ".cs"

    code_hello_world = 'Console.WriteLine("hello, world");'
    code_stderr = 'Console.Error.WriteLine("to the other stream");'

    completion_samples = [
        {"text": "63.Millim", "matches": {"Millimetres"}},
        {"text": "Console.WriteL", "matches": {"WriteLine"}},
    ]

    complete_code_samples = ["1 + 1", "var a = 2;", "int F(int a)\n{\n    return a;\n}"]
    incomplete_code_samples = ["int F(int a)\n{", "var a = new[] {"]
    invalid_code_samples = ["var a = );", "int 3a = 2;"]

    code_generate_error = 'throw new InvalidOperationException("as asked");'

    code_execute_result = [
        {"code": "6 * 7", "result": "42", "mime": "text/plain"},
        {"code": '"text"', "result": "text", "mime": "text/plain"},
    ]

    code_display_data = [
        {"code": "display(63.Millimetres());", "mime": "text/html"},
        {"code": 'display("shown");', "mime": "text/plain"},
    ]

    code_history_pattern = "6*"
    supported_history_operations = ("tail", "range", "search")

    code_inspect_sample = "63.Millimetres"


if __name__ == "__main__":
    unittest.main()
