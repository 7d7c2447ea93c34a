// bench_import FOLDER LIBRARY: brings the photos of a folder into a new library and prints one
// line: photos, seconds, and the peak memory of this process in MB.

#include <sys/resource.h>

#include <chrono>
#include <iostream>

#include "indexer/intake/import.h"
#include "indexer/worker/confined.h"

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
    std::cout << report.imported.size() << ' ' << spent.count() << ' ' << used.ru_maxrss / 1024
              << '\n';
    return report.refused.empty() ? 0 : 1;
}
