// quarterturn-heif-decoder: opens HEICs and AVIFs for the other two programs, confined as
// quarterturn-decoder is, which starts in a fraction of its time. See indexer/worker.

#include "indexer/worker/serve.h"

int main(int argc, char** argv) {
    // Without what other programs do at their end, which may need what is closed now.
    ::_exit(
        quarterturn::be_worker({argv, static_cast<std::size_t>(argc)}, quarterturn::heif_trade()));
}
