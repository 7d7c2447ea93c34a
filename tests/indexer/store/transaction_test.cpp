#include <gtest/gtest.h>

#include <SQLiteCpp/SQLiteCpp.h>
#include <thread>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

class TransactionTest : public testing::Test, public ExampleLibrary {
  protected:
    void set(const char* name) { library.settings().set(name, "set"); }
    bool is_set(const char* name) { return library.settings().get(name).has_value(); }
};

TEST_F(TransactionTest, IsUndoneUnlessCommitted) {
    {
        Transaction transaction(library.database());
        set("lost");
    }
    {
        Transaction transaction(library.database());
        set("kept");
        transaction.commit();
    }
    EXPECT_FALSE(is_set("lost"));
    EXPECT_TRUE(is_set("kept"));
}

TEST_F(TransactionTest, OneInsideAnotherIsUndoneWithIt) {
    {
        Transaction outer(library.database());
        Transaction inner(library.database());
        set("inner");
        inner.commit();
    }
    EXPECT_FALSE(is_set("inner"));
}

TEST_F(TransactionTest, OneInsideAnotherIsUndoneByItself) {
    {
        Transaction outer(library.database());
        set("before");
        {
            Transaction inner(library.database());
            set("inner");
        }
        set("after");
        outer.commit();
    }
    EXPECT_TRUE(is_set("before"));
    EXPECT_FALSE(is_set("inner"));
    EXPECT_TRUE(is_set("after"));
}

TEST_F(TransactionTest, LeavesOutARefusedPhotoOfABatch) {
    Transaction batch(library.database());
    library.photos().add(example_photo("one.jpg"));
    EXPECT_THROW(library.photos().add(example_photo("one.jpg")), StoreError);
    library.photos().add(example_photo("two.jpg"));
    batch.commit();
    EXPECT_EQ(library.photos().all().size(), 2U);
}

TEST_F(TransactionTest, SaysSoWhenAnotherProgramKeepsTheLibraryBusy) {
    Library other = Library::open(library.folder());
    other.database().handle().setBusyTimeout(20);
    Transaction busy(library.database());
    set("mine");
    try {
        other.settings().set("theirs", "set");
        FAIL() << "two cannot write at once";
    } catch (const StoreError& error) {
        EXPECT_NE(std::string(error.what()).find("Another program is writing"), std::string::npos)
            << error.what();
    }
    EXPECT_EQ(other.settings().get("mine"), std::nullopt) << "reading goes on meanwhile";
    busy.commit();
    EXPECT_EQ(other.settings().get("mine"), "set");
}

TEST_F(TransactionTest, WaitsForAnotherProgramToFinish) {
    Library other = Library::open(library.folder());
    auto busy = std::make_unique<Transaction>(library.database());
    set("mine");
    std::thread waiting([&] { other.settings().set("theirs", "set"); });
    std::this_thread::sleep_for(std::chrono::milliseconds{50});
    busy->commit();
    busy.reset();
    waiting.join();
    EXPECT_TRUE(is_set("mine"));
    EXPECT_TRUE(is_set("theirs"));
}

}  // namespace
}  // namespace quarterturn
