#pragma once
// The worker's side: what it answers to each photo that it is given.

#include <functional>
#include <opencv2/core.hpp>
#include <span>
#include <vector>

#include "indexer/worker/message.h"

namespace quarterturn {

struct Answer {
    WorkerReply reply;
    std::vector<std::byte> bytes{};  // with a picture, its pixels instead
    cv::Mat pixels{};
};

using Answering = std::function<Answer(const Request&, std::span<const std::byte>)>;

// What a kind of worker does, and what it has to do once while it still can: libraries open files
// when they are used for the first time, and these doors are about to close.
struct Trade {
    Answering answering;
    std::function<void()> use_for_the_first_time = [] {};
};

// Reads metadata and decodes every kind of photo but HEIF. No trade throws for bad bytes.
Trade photo_trade();
// Decodes HEIF alone.
Trade heif_trade();
// Decodes JPEG alone, and starts in a fraction of the time.
Trade jpeg_trade();

// What the words of its command line say to a worker: the process that started it, and the bytes
// that it may take.
struct WorkerWords {
    int parent = 0;
    std::int64_t most_memory = 0;
};

// The whole life of a worker: sets up what has to be read before the doors close, confines this
// process, says that it is ready, and answers until the program goes. Answers the exit code: 0, or
// 1 when it could not be confined.
int be_worker(const WorkerWords& words, const Trade& trade);

// The same for the words of a command line: `decoder PARENT BYTES`. 2 for other words.
int be_worker(std::span<char*> words, const Trade& trade);

}  // namespace quarterturn
