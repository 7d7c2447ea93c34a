#include "indexer/backup/clear_away.h"

namespace quarterturn {
namespace {

class ClearingAway {
  public:
    explicit ClearingAway(const BackupFolder& folder) : folder_(folder) {}

    ClearedAway run(const std::vector<std::string>& paths) {
        std::vector<std::string> left;
        for (const std::string& path : paths) {
            if (!attempt([&] { remove(path); })) left.push_back(path);
        }
        attempt(
            [&] { left.empty() ? folder_.forget_unfinished() : folder_.note_unfinished(left); });
        return std::move(cleared_);
    }

  private:
    void remove(const std::string& path) {
        if (folder_.remove(path)) cleared_.removed.insert(path);
        folder_.drop_empty_folders_of(path);
    }

    template <class Act>
    bool attempt(Act act) {
        try {
            act();
            return true;
        } catch (const DiskError& error) {
            cleared_.staying.push_back({error.file(), error.what()});
            return false;
        }
    }

    const BackupFolder& folder_;
    ClearedAway cleared_;
};

}  // namespace

ClearedAway clear_away(const BackupFolder& folder, const std::vector<std::string>& paths) {
    return ClearingAway(folder).run(paths);
}

}  // namespace quarterturn
