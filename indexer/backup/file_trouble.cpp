#include "indexer/backup/file_trouble.h"

#include "indexer/intake/set_aside.h"

namespace quarterturn {
namespace {

std::string_view what_is_wrong(Trouble trouble) {
    switch (trouble) {
        case Trouble::missing:
            return " was not there";
        case Trouble::changed:
            return " was no longer what was brought in";
        case Trouble::unreadable:
            return " could not be read";
    }
    return {};
}

std::string next_step(const FileTrouble& trouble) {
    if (!trouble.not_put_back.empty()) {
        return ", and could not be put back. " + trouble.not_put_back;
    }
    if (!trouble.moved_to.empty()) {
        return ": it lies in " + trouble.moved_to +
               ", where something else than this program moved it. Leave it there; qturn verify "
               "without --look-only gives it its place again.";
    }
    if (!trouble.copy_at.empty()) {
        return ": a whole copy of it lies in " + trouble.copy_at +
               ". Leave it there; qturn verify without --look-only puts it back from that.";
    }
    if (!trouble.held_by.empty()) {
        return ": the backup in " + trouble.held_by.string() +
               " holds it, and qturn verify without --look-only puts it back from there.";
    }
    if (trouble.trouble == Trouble::unreadable) {
        return ": see to the disk and to the file's permissions, and check again.";
    }
    return ": connect a drive with a backup and check again, or bring it in again from its card or "
           "phone.";
}

std::string source_of(const FileTrouble& trouble) {
    if (trouble.healed_by_copy) return "its copy in " + trouble.copy_at;
    return "the backup in " + trouble.healed_from.string();
}

}  // namespace

std::string sentence(const FileTrouble& trouble) {
    std::string words = trouble.path + std::string(what_is_wrong(trouble.trouble));
    if (trouble.moved_back) {
        return words + ", but lay in " + trouble.moved_to +
               ", where something else than this program had moved it; it was put back.";
    }
    if (!trouble.healed()) return words + next_step(trouble);
    words += ", and was put back from " + source_of(trouble) + ".";
    if (trouble.set_aside.empty()) return words;
    return words + " The changed one is kept as " + trouble.set_aside.string() +
           "; remove it when you have looked.";
}

std::string words_without_record(const Path& path, const std::string& shown, bool anything_erased) {
    if (name_before_set_aside(path.filename().native())) {
        return shown +
               " is by its name a file that was found changed and set aside: look at it, and "
               "remove it, or keep it outside the library.";
    }
    return shown + (anything_erased ? " is in no record: remove it, if it may be of what was "
                                      "erased; else bring it in, or remove it."
                                    : " is in no record: bring it in, or remove it.");
}

}  // namespace quarterturn
