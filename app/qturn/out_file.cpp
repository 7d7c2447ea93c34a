#include "app/qturn/out_file.h"

#include "app/qturn/reply.h"
#include "indexer/disk/lies_in.h"

namespace quarterturn {

namespace {

bool has_ending(const Path& file, std::string_view wanted) {
    std::string ending = file.extension().string();
    std::transform(ending.begin(), ending.end(), ending.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return ending == wanted;
}

}  // namespace

bool is_pdf(const Path& file) {
    return has_ending(file, ".pdf");
}

bool is_html(const Path& file) {
    return has_ending(file, ".html") || has_ending(file, ".htm");
}

void refuse_in_library(const Session& session, const Path& file) {
    if (!lies_in(file, session.folder())) return;
    throw WrongUse(file.string() +
                   " lies in the library's own folder, where nothing else is kept: name a place "
                   "outside it.");
}

void refuse_to_replace(const Path& file) {
    if (!real_file_system().exists(file)) return;
    throw WrongUse(file.string() + " is there already. To write over it, add --replace.");
}

void refuse_bad_place(const Session& session, const Path& file, bool replace) {
    const Path folder = file.has_parent_path() ? file.parent_path() : Path(".");
    if (!real_file_system().exists(folder)) {
        throw WrongUse("There is no folder " + folder.string() + ". Make it first.");
    }
    refuse_in_library(session, file);
    if (!replace) refuse_to_replace(file);
}

void refuse_bad_pdf(const Session& session, const Path& file, bool replace) {
    if (!is_pdf(file)) {
        throw WrongUse("It is written as .pdf; '" + file.string() + "' does not end in it.");
    }
    refuse_bad_place(session, file, replace);
}

}  // namespace quarterturn
