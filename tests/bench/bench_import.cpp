// bench_import FOLDER LIBRARY: brings the photos of a folder into a new library and prints one
// line: photos, seconds, and the peak memory in MB, of this process and of the workers that open
// the photos, what they share counted for each.

#include <sys/resource.h>

#include <chrono>
#include <fstream>
#include <iostream>

#include "indexer/intake/import.h"
#include "indexer/worker/confined.h"

namespace {

// VmHWM of proc(5).
long peak_kilobytes(pid_t process) {
    std::ifstream status("/proc/" + std::to_string(process) + "/status");
    for (std::string word; status >> word;) {
        if (word != "VmHWM:") continue;
        long kilobytes = 0;
        status >> kilobytes;
        return kilobytes;
    }
    return 0;
}

}  // namespace

int main(int count, char** words) {
    using namespace quarterturn;
    if (count != 3) {
        std::cerr << "Usage: bench_import FOLDER LIBRARY\n";
        return 2;
    }
    Library library = Library::create(words[2]);
    const auto decoder = make_confined_decoder();
    const auto begun = std::chrono::steady_clock::now();
    const ImportReport report = import_photos(library, *decoder, {.sources = {words[1]}});
    const std::chrono::duration<double> spent = std::chrono::steady_clock::now() - begun;
    rusage used{};
    ::getrusage(RUSAGE_SELF, &used);
    long kilobytes = used.ru_maxrss;
    for (const pid_t worker : idle_workers()) kilobytes += peak_kilobytes(worker);
    std::cout << report.imported.size() << ' ' << spent.count() << ' ' << kilobytes / 1024 << '\n';
    return report.refused.empty() ? 0 : 1;
}
