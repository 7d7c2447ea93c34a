#pragma once
// What is still to be fetched, shared between the window and the threads that fetch. Small pictures
// of everything on screen come before any sharp one; within that, each viewer's own order stands.
// A viewer's new wishes replace its old ones, so what scrolled away is not fetched any more.

#include <condition_variable>
#include <deque>
#include <mutex>
#include <optional>
#include <set>
#include <tuple>
#include <vector>

#include "indexer/record/photo.h"

namespace quarterturn {

struct PictureJob {
    Photo photo;
    int long_edge = 0;  // pixels; 0: all of them
    bool small = false;

    auto key() const { return std::tuple(photo.id, small, small ? 0 : long_edge); }
};

class PictureQueue {
  public:
    using Viewer = const void*;

    // The newest viewer's wishes come first.
    void replace(Viewer viewer, std::deque<PictureJob> jobs);
    void drop(Viewer viewer);

    // Waits for the next job; nothing when the queue was closed. A job that is being done by
    // another thread is passed over.
    std::optional<PictureJob> next();
    // The window has the picture: whoever else still wants it is served too.
    void done(const PictureJob& job);
    void close();

  private:
    std::optional<PictureJob> take_first(bool small);

    struct Wishes {
        Viewer viewer;
        std::deque<PictureJob> jobs;
    };
    std::mutex mutex_;
    std::condition_variable changed_;
    std::vector<Wishes> wishes_;
    std::set<std::tuple<PhotoId, bool, int>> at_work_;
    bool closed_ = false;
};

}  // namespace quarterturn
