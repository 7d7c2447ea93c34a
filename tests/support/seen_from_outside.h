#pragma once
// A library as somebody sees it who knows nothing of the program: by SQLite, OpenSSL and the folder
// alone. What it must be after whatever happened to it is asked here, not of the code under test.

#include <openssl/evp.h>
#include <sqlite3.h>

#include <array>
#include <filesystem>
#include <fstream>
#include <set>
#include <string>
#include <vector>

namespace quarterturn {

namespace outside_detail {

inline std::string sha256_by_openssl(const std::filesystem::path& file) {
    std::ifstream stream(file, std::ios::binary);
    EVP_MD_CTX* context = EVP_MD_CTX_new();
    EVP_DigestInit_ex(context, EVP_sha256(), nullptr);
    std::array<char, 65536> part{};
    while (stream.read(part.data(), part.size()), stream.gcount() > 0) {
        EVP_DigestUpdate(context, part.data(), static_cast<std::size_t>(stream.gcount()));
    }
    std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
    unsigned int length = 0;
    EVP_DigestFinal_ex(context, digest.data(), &length);
    EVP_MD_CTX_free(context);
    std::string hex;
    for (unsigned int i = 0; i < length; ++i) {
        constexpr std::string_view digits = "0123456789abcdef";
        hex += {digits[digest[i] >> 4U], digits[digest[i] & 15U]};
    }
    return hex;
}

class RecordsFile {
  public:
    explicit RecordsFile(const std::filesystem::path& file) {
        sqlite3_open_v2(file.c_str(), &handle_, SQLITE_OPEN_READWRITE, nullptr);
        sqlite3_busy_timeout(handle_, 5000);
    }
    ~RecordsFile() { sqlite3_close(handle_); }
    RecordsFile(const RecordsFile&) = delete;
    RecordsFile& operator=(const RecordsFile&) = delete;

    using Rows = std::vector<std::vector<std::string>>;

    // An error is a row too, so that none is overlooked.
    Rows rows(const char* sql) {
        Rows all;
        sqlite3_stmt* statement = nullptr;
        int state = sqlite3_prepare_v2(handle_, sql, -1, &statement, nullptr);
        while (state == SQLITE_OK && (state = sqlite3_step(statement)) == SQLITE_ROW) {
            auto& row = all.emplace_back();
            for (int i = 0; i < sqlite3_column_count(statement); ++i) {
                const auto* text = sqlite3_column_text(statement, i);
                row.emplace_back(text == nullptr ? "" : reinterpret_cast<const char*>(text));
            }
            state = SQLITE_OK;
        }
        if (state != SQLITE_DONE)
            all.push_back({std::string(sql) + ": " + sqlite3_errmsg(handle_)});
        sqlite3_finalize(statement);
        return all;
    }

  private:
    sqlite3* handle_ = nullptr;
};

}  // namespace outside_detail

// What is wrong with it; nothing when every record has its file, whole, and the records are sound.
inline std::vector<std::string> wrong_from_outside(const std::filesystem::path& library) {
    namespace files = std::filesystem;
    outside_detail::RecordsFile records(library / "records.sqlite");
    std::vector<std::string> wrong;
    for (const auto& row : records.rows("PRAGMA integrity_check")) {
        if (row.front() != "ok") wrong.push_back("integrity: " + row.front());
    }
    for (const auto& row : records.rows("PRAGMA foreign_key_check")) {
        wrong.push_back("belongs to nothing: " + row.front());
    }
    for (const auto& row : records.rows("SELECT path, sha256 FROM photo "
                                        "UNION ALL SELECT path, sha256 FROM consent_paper "
                                        "UNION ALL SELECT path, sha256 FROM inspiration")) {
        const files::path file = library / row.front();
        if (row.size() < 2 || !files::is_regular_file(file)) {
            wrong.push_back(row.front() + " has no file");
        } else if (outside_detail::sha256_by_openssl(file) != row[1]) {
            wrong.push_back(row.front() + " is not what was recorded");
        }
    }
    return wrong;
}

// Files in photos/ that no record speaks of: for when nothing is under way.
inline std::vector<std::string> without_record_from_outside(const std::filesystem::path& library) {
    namespace files = std::filesystem;
    std::set<std::string> known;
    {
        outside_detail::RecordsFile records(library / "records.sqlite");
        for (const auto& row : records.rows("SELECT path FROM photo")) known.insert(row.front());
    }
    std::vector<std::string> strange;
    for (const auto& entry : files::recursive_directory_iterator(library / "photos")) {
        const std::string path = entry.path().lexically_relative(library).generic_string();
        if (!entry.is_directory() && !known.contains(path)) strange.push_back(path);
    }
    return strange;
}

}  // namespace quarterturn
