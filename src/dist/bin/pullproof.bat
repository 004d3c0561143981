@echo off
rem Starts Pullproof with the Java of JAVA_HOME or, without it, the one on the PATH.
setlocal
for %%i in ("%~dp0..") do set "here=%%~fi"
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
"%java%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto "-Dpullproof.home=%here%" -cp "%here%\lib\*" org.pullproof.Main %*
exit /b %ERRORLEVEL%
