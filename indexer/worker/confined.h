#pragma once
// Opening photos of strangers in workers: processes that can do nothing but open a photo, and are
// replaced when they die over one. HEIF has a kind of workers of its own, whose libraries take long
// to load. Everything in the house that opens a photo's file goes this way; nothing is opened in
// this process when no worker can be had.

#include <sys/types.h>

#include <memory>
#include <span>
#include <vector>

#include "indexer/image/decode.h"
#include "indexer/metadata/read.h"
#include "indexer/worker/worker_process.h"

namespace quarterturn {

// Of RAW files, it answers the largest picture inside them. A photo that a worker died over, took
// too long for, or that no worker could be started for, is refused with a sentence. Safe to use
// from several threads at once.
std::unique_ptr<Decoder> make_confined_decoder();

// The same, for what is drawn: JPEG, as small pictures are, is opened by workers that know nothing
// else and start in a fraction of the time.
std::unique_ptr<Decoder> make_quick_decoder();

// Begins to start as many of those as there are cores, so that they are there when the first
// picture is asked for.
void start_quick_workers();

// The same of those that open every kind of photo but HEIC and AVIF.
void start_photo_workers();

// As read_metadata. Throws GivenUp and NoWorker. Safe to use from several threads at once.
FileMetadata read_metadata_confined(std::span<const std::byte> photo);

// Of several at once, in their order, which for small files takes a fraction of the time. Throws
// the same, also where only one of them is to blame.
std::vector<FileMetadata> read_metadata_confined(
    std::span<const std::span<const std::byte>> photos);

// The processes of this program's workers that wait for the next photo. They end with this process.
std::vector<pid_t> idle_workers();

}  // namespace quarterturn
