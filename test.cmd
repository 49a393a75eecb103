@echo off
rem The same as ./test, for Windows, without the format check and the closing line.
dotnet test --solution "%~dp0Jumpwright.slnx" -c Release
