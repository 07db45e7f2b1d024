// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
/// Attacks on the built program, started as a process of its own as a person or a script would start it. Each attack
/// plants something, runs the program, and judges what it said, how it ended and what lies on the disk afterwards. The
/// short form runs by default, in seconds; CAPRAIL_ATTACK_LONG=1 asks for the long one.
#include <algorithm>
#include <cerrno>
#include <chrono>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <iterator>
#include <string>
#include <sys/wait.h>
#include <unistd.h>
#include <vector>

namespace caprail::attack {

/// True when the long form was asked for.
inline bool isLong() {
    const char* wanted = std::getenv("CAPRAIL_ATTACK_LONG");
    return wanted != nullptr && std::string(wanted) == "1";
}

/// `brief` in the short form, `thorough` in the long one.
inline int so(int brief, int thorough) {
    return isLong() ? thorough : brief;
}

/// A folder that goes away with the test.
class Folder {
public:
    Folder() {
        std::string name = (std::filesystem::temp_directory_path() / "caprail-attack-XXXXXX").string();
        m_path = ::mkdtemp(name.data());
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() {
        std::error_code ignored;
        std::filesystem::remove_all(m_path, ignored);
    }
    [[nodiscard]] std::string operator/(const std::string& name) const { return (m_path / name).string(); }
    [[nodiscard]] std::string path() const { return m_path.string(); }
    /// The names in it, hidden ones too, sorted.
    [[nodiscard]] std::vector<std::string> names() const {
        std::vector<std::string> all;
        for (const auto& entry : std::filesystem::directory_iterator(m_path)) {
            all.push_back(entry.path().filename().string());
        }
        std::sort(all.begin(), all.end());
        return all;
    }

private:
    std::filesystem::path m_path;
};

inline std::string read(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

inline void write(const std::string& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary | std::ios::trunc) << bytes;
}

/// How the program ended and what it said. Exit codes: 0 done, 1 the answer is no, 2 unusable, 64 wrong usage.
struct Answer {
    int exitCode = -1;    ///< −1 when it did not end by itself
    bool hung = false;    ///< it had to be killed: it had not ended when its time was over
    bool crashed = false; ///< by a signal, or stopped by a sanitizer
    std::string out, err;
    /// Ended by itself, in one of the ways that the program documents.
    [[nodiscard]] bool isOrderly() const {
        return !hung && !crashed && (exitCode == 0 || exitCode == 1 || exitCode == 2 || exitCode == 64);
    }
    [[nodiscard]] bool says(const std::string& words) const {
        return out.find(words) != std::string::npos || err.find(words) != std::string::npos;
    }
};

struct Call {
    std::vector<std::string> arguments;
    std::string input;                                                     ///< given on standard input
    std::vector<std::string> environment = {};                             ///< NAME=value, beside the test's own
    std::chrono::milliseconds allowed = std::chrono::milliseconds(30'000); ///< then it has hung and is killed
    /// Called every few milliseconds while it runs, with its process number: to stop it, to move files under it.
    void (*meanwhile)(pid_t) = nullptr;
};

namespace detail {

/// In the child: what it is given as its files and environment, then the program itself.
[[noreturn]] inline void become(const Call& call, int input, int out, int err) {
    ::dup2(input, STDIN_FILENO);
    ::dup2(out, STDOUT_FILENO);
    ::dup2(err, STDERR_FILENO);
    ::setenv("QT_QPA_PLATFORM", "offscreen", 1);
    ::setenv("LC_ALL", "C.UTF-8", 1);
    ::setenv("LANGUAGE", "en", 1);
    // A sanitizer's end must not look like the program's own "no".
    ::setenv("ASAN_OPTIONS", "exitcode=99:detect_leaks=0:verify_asan_link_order=0", 1);
    ::setenv("UBSAN_OPTIONS", "exitcode=99:halt_on_error=1", 1);
    for (const std::string& variable : call.environment) {
        const auto equals = variable.find('=');
        ::setenv(variable.substr(0, equals).c_str(), variable.substr(equals + 1).c_str(), 1);
    }
    std::string program = CAPRAIL_PROGRAM;
    std::vector<std::string> copies = call.arguments;
    std::vector<char*> arguments{program.data()};
    for (std::string& argument : copies) {
        arguments.push_back(argument.data());
    }
    arguments.push_back(nullptr);
    ::execv(program.c_str(), arguments.data());
    ::_exit(127);
}

/// A file without a name that holds `text`, at its beginning.
inline int unnamedFile(const std::string& text) {
    FILE* const file = std::tmpfile();
    const int descriptor = ::fcntl(::fileno(file), F_DUPFD_CLOEXEC, 3);
    std::fclose(file);
    if (::write(descriptor, text.data(), text.size()) != static_cast<ssize_t>(text.size()) ||
        ::lseek(descriptor, 0, SEEK_SET) != 0) {
        ADD_FAILURE() << "no room for a scratch file: " << std::strerror(errno);
    }
    return descriptor;
}

inline std::string textOf(int descriptor) {
    std::string text;
    char buffer[4096];
    ::lseek(descriptor, 0, SEEK_SET);
    for (ssize_t count = 0; (count = ::read(descriptor, buffer, sizeof(buffer))) > 0;) {
        text.append(buffer, static_cast<std::size_t>(count));
    }
    ::close(descriptor);
    return text;
}

} // namespace detail

/// Runs the program to its end, or until its time is over.
inline Answer run(const Call& call) {
    const int input = detail::unnamedFile(call.input);
    const int out = detail::unnamedFile({});
    const int err = detail::unnamedFile({});
    const pid_t child = ::fork();
    if (child == 0) {
        detail::become(call, input, out, err);
    }
    Answer answer;
    int status = 0;
    const auto end = std::chrono::steady_clock::now() + call.allowed;
    for (unsigned pause = 500; ::waitpid(child, &status, WNOHANG) == 0; pause = std::min(pause * 2, 5'000U)) {
        if (call.meanwhile != nullptr) {
            call.meanwhile(child);
        }
        if (std::chrono::steady_clock::now() > end) {
            answer.hung = true;
            ::kill(child, SIGKILL);
            ::waitpid(child, &status, 0);
            break;
        }
        ::usleep(pause);
    }
    ::close(input);
    answer.out = detail::textOf(out);
    answer.err = detail::textOf(err);
    answer.exitCode = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    answer.crashed = (WIFSIGNALED(status) && !answer.hung) || answer.exitCode == 99 ||
                     answer.err.find("Sanitizer") != std::string::npos ||
                     answer.err.find("runtime error:") != std::string::npos;
    return answer;
}

inline Answer caprail(std::vector<std::string> arguments, std::string input = {}) {
    return run({std::move(arguments), std::move(input)});
}

/// Makes a record at `path` from one of the sample builds ("mid-survey", "closed", "moved-in-verify-round").
inline void makeRecord(const std::string& path, const std::string& sample = "mid-survey") {
    const Answer made = caprail({"import", SAMPLE_BUILDS "/" + sample + ".jsonl", path});
    ASSERT_EQ(made.exitCode, 0) << made.err;
}

/// Counts attacks. At its end it says how many were made and how many were held; each that was not held is a failure
/// of the test, named by what was done.
class Count {
public:
    Count() = default;
    Count(const Count&) = delete;
    Count& operator=(const Count&) = delete;
    ~Count() {
        std::printf("%d attacks, %d held\n", m_made, m_held);
        EXPECT_GT(m_made, 0) << "not one attack was made: the test proves nothing";
    }
    void held(bool isHeld, const std::string& attack, const Answer& answer = {}) {
        ++m_made;
        m_held += isHeld ? 1 : 0;
        EXPECT_TRUE(isHeld) << attack << "\n  exit " << answer.exitCode << (answer.hung ? ", hung" : "")
                            << (answer.crashed ? ", crashed" : "") << "\n  out: " << answer.out.substr(0, 500)
                            << "\n  err: " << answer.err.substr(0, 1'500);
    }

private:
    int m_made = 0;
    int m_held = 0;
};

} // namespace caprail::attack
