#pragma once

#include <gtest/gtest.h>

#include "indexer/lock/key_ring.h"
#include "indexer/store/lock_library.h"
#include "tests/support/example_library.h"
#include "tests/support/failing_disk.h"
#include "tests/support/files.h"

namespace quarterturn {

class DiskWithABadSector : public FailingDisk {
  public:
    Path bad;
    Path may_not_go;
    int error = EIO;

    Bytes read(const Path& file, std::int64_t most_bytes) override {
        if (file == bad) throw disk_error(error, file, Doing::reading);
        return FailingDisk::read(file, most_bytes);
    }
    void remove(const Path& file) override {
        if (file == may_not_go) throw disk_error(EACCES, file, Doing::removing);
        FailingDisk::remove(file);
    }
    std::vector<Path> list(const Path& folder) override {
        if (folder == bad) throw disk_error(error, folder, Doing::reading);
        return FailingDisk::list(folder);
    }
};

struct LeftByLock : testing::Test {
    LeftByLock() {
        Library library = Library::create(place);
        for (const char* name : {"IMG_1.jpg", "IMG_2.jpg", "IMG_3.jpg"}) put(name, name);
    }
    ~LeftByLock() override { key_ring::forget(place); }

    Path file_called(const std::string& name) const { return place / "photos/2026" / name; }
    void put(const std::string& name, std::string_view text) const {
        std::filesystem::create_directories(file_called(name).parent_path());
        write_bytes(file_called(name), std::as_bytes(std::span(text)));
    }

    std::string read_in_library(const std::string& name) const {
        Library library = Library::open(place);
        const Bytes bytes = library.disk().read(file_called(name), any_size);
        return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
    }

    void expect_named(const LockReport& report, const std::string& name) {
        ASSERT_EQ(report.problems.size(), 1U);
        EXPECT_NE(report.problems[0].reason.find(file_called(name).string()), std::string::npos)
            << report.problems[0].reason;
    }

    TemporaryFolder folder;
    Path place = folder / "library";
    DiskWithABadSector disk;
    NewLock lock = new_lock("seven owls below the granary", least_guess_cost());
};

}  // namespace quarterturn
