@echo off
rem Starts Loomwright: builds it on first use and after a change of its sources, then runs it.
setlocal EnableExtensions DisableDelayedExpansion
set "LW_HOME=%~dp0"
if "%LW_HOME:~-1%"=="\" set "LW_HOME=%LW_HOME:~0,-1%"
set "LW_TARGET=%LW_HOME%\cli\target"
set "LW_STATE=%LW_TARGET%\start"
set "LW_JAR=%LW_TARGET%\loomwright.jar"
set "LW_ARCHIVE=%LW_STATE%\classes.jsa"
set "LW_LOG=%LW_TARGET%\build.log"

call :find_jdk
if not defined LW_JDK goto no_jdk

if not exist "%LW_STATE%" mkdir "%LW_STATE%"
call :list_sources > "%LW_STATE%\sources.now"
if not exist "%LW_JAR%" goto build
if not exist "%LW_STATE%\sources.built" goto build
fc /b "%LW_STATE%\sources.now" "%LW_STATE%\sources.built" >nul 2>nul
if errorlevel 1 goto build
goto start

:build
where mvn >nul 2>nul
if errorlevel 1 goto no_maven
echo Building Loomwright, first use or changed sources; this takes a minute or two ... 1>&2
set "JAVA_HOME=%LW_JDK%"
pushd "%LW_HOME%"
call mvn -q -B -ntp -Dmaven.test.skip=true -pl cli -am package > "%LW_LOG%" 2>&1
if errorlevel 1 goto build_failed
popd
echo Preparing a fast start ... 1>&2
if exist "%LW_ARCHIVE%" del "%LW_ARCHIVE%"
"%LW_JDK%\bin\java.exe" "-XX:ArchiveClassesAtExit=%LW_ARCHIVE%" -XX:+UseSerialGC -Djava.awt.headless=true -Dfile.encoding=UTF-8 "-Dloomwright.home=%LW_HOME%" -cp "%LW_JAR%" org.loomwright.cli.Rehearsal "%LW_STATE%\rehearsal" >> "%LW_LOG%" 2>&1
if exist "%LW_STATE%\rehearsal" rmdir /s /q "%LW_STATE%\rehearsal"
copy /y "%LW_STATE%\sources.now" "%LW_STATE%\sources.built" >nul

:start
set "LW_SPEED="
if "%~1"=="" set "LW_SPEED=-XX:TieredStopAtLevel=1"
if "%~1"=="plan" set "LW_SPEED=-XX:TieredStopAtLevel=1"
if "%~1"=="demo" set "LW_SPEED=-XX:TieredStopAtLevel=1"
if "%~1"=="sum" set "LW_SPEED=-XX:TieredStopAtLevel=1"
if "%~1"=="help" set "LW_SPEED=-XX:TieredStopAtLevel=1"
if "%~1"=="--help" set "LW_SPEED=-XX:TieredStopAtLevel=1"
if "%~1"=="--version" set "LW_SPEED=-XX:TieredStopAtLevel=1"
rem The program prints UTF-8; the console gets its own code page back afterwards.
for /f "tokens=2 delims=:." %%C in ('chcp') do set "LW_PAGE=%%C"
chcp 65001 >nul
if exist "%LW_ARCHIVE%" goto start_shared
"%LW_JDK%\bin\java.exe" -XX:+UseSerialGC %LW_SPEED% -Xlog:disable -Xlog:all=error:stderr -Djava.awt.headless=true -Dfile.encoding=UTF-8 "-Dloomwright.home=%LW_HOME%" -jar "%LW_JAR%" %*
goto done

:start_shared
"%LW_JDK%\bin\java.exe" -XX:+UseSerialGC %LW_SPEED% "-XX:SharedArchiveFile=%LW_ARCHIVE%" -Xlog:disable -Xlog:all=error:stderr -Djava.awt.headless=true -Dfile.encoding=UTF-8 "-Dloomwright.home=%LW_HOME%" -jar "%LW_JAR%" %*
goto done

:done
set "LW_CODE=%ERRORLEVEL%"
chcp %LW_PAGE% >nul
exit /b %LW_CODE%

:build_failed
popd
echo The build failed. What Maven said: 1>&2
type "%LW_LOG%" 1>&2
exit /b 3

:no_maven
echo Loomwright is built with Maven, version 3.6.3 or newer, and there is no mvn on the PATH. 1>&2
echo Install Maven, add its bin folder to the PATH, and try again. 1>&2
exit /b 3

:no_jdk
echo Loomwright needs a Java Development Kit, version 17 or newer, and found none. 1>&2
echo Install one, for instance with: winget search openjdk 1>&2
echo If it is installed in an unusual folder, set JAVA_HOME to that folder. 1>&2
exit /b 3

rem One line per file that goes into the jar: time, size and name.
:list_sources
echo %LW_HOME% %LW_JDK%
for %%F in ("%LW_HOME%\pom.xml" "%LW_HOME%\.mvn\jvm.config") do echo %%~tzF %%F
call :list_module physics
call :list_module model
call :list_module store
call :list_module planner
call :list_module intake
call :list_module drawing
call :list_module papers
call :list_module web
call :list_module cli
exit /b 0

:list_module
for %%F in ("%LW_HOME%\%~1\pom.xml") do echo %%~tzF %%F
for /r "%LW_HOME%\%~1\src\main" %%F in (*) do echo %%~tzF %%F
exit /b 0

rem Sets LW_JDK: JAVA_HOME first, then the javac on the PATH, then the usual folders.
:find_jdk
set "LW_JDK="
if defined JAVA_HOME call :try_jdk "%JAVA_HOME%"
if defined LW_JDK exit /b 0
for /f "delims=" %%P in ('where javac 2^>nul') do call :try_javac "%%~dpP."
if defined LW_JDK exit /b 0
for /d %%D in ("%ProgramFiles%\Java\*" "%ProgramFiles%\*jdk*" "%ProgramFiles%\*OpenJDK*" "%USERPROFILE%\.jdks\*") do call :try_jdk "%%~fD"
if defined LW_JDK exit /b 0
for /d %%V in ("%ProgramFiles%\*") do for /d %%D in ("%%~fV\jdk-*") do call :try_jdk "%%~fD"
exit /b 0

:try_javac
for %%B in ("%~1\..") do call :try_jdk "%%~fB"
exit /b 0

rem Takes the folder %1 when it holds a JDK 17 or newer; the file "release" names the version.
:try_jdk
if defined LW_JDK exit /b 0
if not exist "%~1\bin\javac.exe" exit /b 0
if not exist "%~1\release" exit /b 0
set "LW_VERSION="
for /f "tokens=2 delims==" %%V in ('findstr /b "JAVA_VERSION=" "%~1\release"') do set "LW_VERSION=%%~V"
if not defined LW_VERSION exit /b 0
for /f "tokens=1 delims=.-+" %%M in ("%LW_VERSION%") do set "LW_MAJOR=%%M"
if %LW_MAJOR% GEQ 17 set "LW_JDK=%~1"
exit /b 0
