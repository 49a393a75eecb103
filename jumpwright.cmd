@echo off
rem The same as ./jumpwright, for Windows.
dotnet run -c Release --project "%~dp0src\Jumpwright.App" -- %*
