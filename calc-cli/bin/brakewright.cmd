@echo off
rem Starts the command line. The first run on a machine writes a class-data archive beside the jar, which
rem makes later ones start faster; where that cannot be written, it starts without.
setlocal
set "here=%~dp0.."
set "jar=%here%\target\brakewright.jar"
set "archive=%here%\target\brakewright.jsa"
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
set "flags=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmn48m -XX:-UsePerfData -Xshare:auto -Xlog:disable -Xlog:all=off"
if not exist "%jar%" echo brakewright is not built yet: run mvn -q -DskipTests package 1>&2& exit /b 2
set "classes=%archive%.classes"
if exist "%archive%" goto start
"%java%" %flags% "-XX:DumpLoadedClassList=%classes%" -jar "%jar%" worksheet >nul 2>&1
"%java%" -Xshare:dump "-XX:SharedClassListFile=%classes%" "-XX:SharedArchiveFile=%archive%" -cp "%jar%" >nul 2>&1
if exist "%classes%" del "%classes%" >nul 2>&1
:start
if exist "%archive%" set "flags=%flags% "-XX:SharedArchiveFile=%archive%""
"%java%" %flags% -jar "%jar%" %*
exit /b %ERRORLEVEL%
