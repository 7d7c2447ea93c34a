#include "ui/widgets/plain_english.h"

#include <QCoreApplication>

#include "tests/ui/support/print.h"

namespace quarterturn {
namespace {

QString photos(int number) {
    return QCoreApplication::translate("test", "%n photo(s) of the head", nullptr, number);
}

TEST(PlainEnglish, WritesOneAndMany) {
    EXPECT_EQ(photos(1), QStringLiteral("1 photo of the head"));
    EXPECT_EQ(photos(0), QStringLiteral("0 photos of the head"));
    EXPECT_EQ(photos(12), QStringLiteral("12 photos of the head"));
}

TEST(PlainEnglish, LeavesTextsWithoutANumberAlone) {
    EXPECT_EQ(QCoreApplication::translate("test", "photo(s)"), QStringLiteral("photo(s)"));
}

}  // namespace
}  // namespace quarterturn
