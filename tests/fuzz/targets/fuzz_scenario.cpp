// A scenario file, loaded into a library that is the same before each: loaded whole, or refused
// with a sentence.

#include "indexer/intake/scenario.h"
#include "tests/fuzz/targets/text.h"
#include "tests/support/temporary_folder.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace quarterturn;
    static const TemporaryFolder folder;
    static Library library = Library::create(folder / "library");
    const Transaction undone{library.database()};
    try {
        load_scenario(library, as_words(data, size), {});
    } catch (const StoreError&) {
        return 0;
    }
    return 0;
}
