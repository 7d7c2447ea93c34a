// Two commands that lock one library at once.

#include <functional>
#include <iostream>
#include <streambuf>
#include <utility>

#include "indexer/lock/key_ring.h"
#include "indexer/store/lock_library.h"
#include "tests/app/program.h"

namespace quarterturn {
namespace {

// Standard input that gives the passphrase when something else was done first.
class WordsAfter : public std::streambuf {
  public:
    explicit WordsAfter(std::function<void()> first) : first_(std::move(first)) {}

  protected:
    int_type underflow() override {
        if (!first_) return traits_type::eof();
        std::exchange(first_, nullptr)();
        setg(text_.data(), text_.data(), text_.data() + text_.size());
        return traits_type::to_int_type(text_.front());
    }

  private:
    std::function<void()> first_;
    std::string text_ = "seven owls below the granary";
};

class TwoLocks : public QturnTest {
  protected:
    void SetUp() override { said({"init"}); }
    void TearDown() override { key_ring::forget(library); }
};

// Its recovery key would open nothing.
TEST_F(TwoLocks, OneLeavesNoPage) {
    const NewLock other = new_lock("nine herons over the weir", least_guess_cost());
    WordsAfter words([&] { lock_library(real_file_system(), library, other, {}); });
    std::streambuf* const before = std::cin.rdbuf(&words);
    const std::string told = complained(
        {"lock", "set", "--new-passphrase-file", "-", "--recovery-key-out", folder / "key.pdf"}, 1);
    std::cin.rdbuf(before);
    EXPECT_NE(told.find("is locked already"), std::string::npos) << told;
    EXPECT_FALSE(std::filesystem::exists(folder / "key.pdf"));
}

}  // namespace
}  // namespace quarterturn
