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

// Reads metadata, or decodes, in this process. Does not throw for bad bytes.
Answer answer(const Request& request, std::span<const std::byte> photo);

using Answering = std::function<Answer(const Request&, std::span<const std::byte>)>;

// What the words of its command line say to a worker: the process that started it, and the bytes
// that it may take.
struct WorkerWords {
    int parent = 0;
    std::int64_t most_memory = 0;
};

// The whole life of a worker: sets up what has to be read before the doors close, confines this
// process, says that it is ready, and answers until the program goes. Answers the exit code: 0, or
// 1 when it could not be confined.
int be_worker(const WorkerWords& words, const Answering& answering = answer);

// The same for the words of a command line: `decoder PARENT BYTES`. 2 for other words.
int be_worker(std::span<char*> words, const Answering& answering = answer);

}  // namespace quarterturn
