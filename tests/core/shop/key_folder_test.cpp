// SPDX-License-Identifier: GPL-3.0-or-later
/// The folder of a person's signing keys.
#include "shop_records.h"

#include <gmock/gmock.h>
#include <shop/key_folder.h>

namespace caprail {
namespace {

using testing::HasSubstr;

class Keys : public testing::Test {
protected:
    static SigningKey keyOf(const std::string& name, std::uint8_t first, std::optional<Date> until = {}) {
        auto key = makeKey(name, {}, until, SecretKey({first, 3, 3}));
        EXPECT_TRUE(key);
        return *key;
    }
    static mode_t modeOf(const std::string& path) {
        struct stat status {};
        EXPECT_EQ(::stat(path.c_str(), &status), 0) << path;
        return status.st_mode & 0777;
    }
    shoptest::Folder folder;
    KeyFolder keys{folder / "data/keys"};
    Date today{20'000};
};

TEST_F(Keys, are_files_that_nobody_else_may_read) {
    const mode_t before = ::umask(0);
    EXPECT_TRUE(keys.keep(keyOf("Kestrel Lane", 1)));
    ::umask(before);
    EXPECT_EQ(modeOf(keys.path()), 0700U);
    EXPECT_EQ(modeOf(keys.path() + "/Kestrel Lane.key"), 0600U);
    EXPECT_EQ(keys.list().keys.size(), 1U);
}

TEST_F(Keys, that_others_may_read_are_not_used) {
    ASSERT_TRUE(keys.keep(keyOf("Kestrel Lane", 1)));
    ::chmod((keys.path() + "/Kestrel Lane.key").c_str(), 0640);
    EXPECT_TRUE(keys.list().keys.empty());
    EXPECT_THAT(keys.list().problems.at(0), HasSubstr("can be read by others"));
    EXPECT_THAT(keys.choose("", today).error().sentence, HasSubstr("can be read by others"));
}

TEST_F(Keys, are_never_written_over) {
    ASSERT_TRUE(keys.keep(keyOf("Kestrel Lane", 1)));
    EXPECT_THAT(keys.keep(keyOf("Kestrel Lane", 2)).error().sentence, HasSubstr("There is a key “Kestrel Lane” already"));
    EXPECT_FALSE(keys.keep(keyOf("Kestrel/Lane", 3)) && keys.keep(keyOf("Kestrel\\Lane", 4)))
        << "two names that make one file name";
    EXPECT_EQ(keys.list().keys.at(0).note.publicKey, publicKeyOf(SecretKey({1, 3, 3})));
}

TEST_F(Keys, the_only_one_signs_without_being_named_and_of_two_one_is_named) {
    EXPECT_THAT(keys.choose("", today).error().sentence, HasSubstr("“caprail key new” makes one"));
    ASSERT_TRUE(keys.keep(keyOf("Kestrel Lane", 1)));
    EXPECT_EQ(keys.choose("", today)->note.name, "Kestrel Lane");
    ASSERT_TRUE(keys.keep(keyOf("Mira at home", 2)));
    EXPECT_THAT(keys.choose("", today).error().sentence, HasSubstr("several keys: “Kestrel Lane”, “Mira at home”"));
    EXPECT_EQ(keys.choose("Mira at home", today)->note.name, "Mira at home");
}

TEST_F(Keys, a_lost_one_is_told_with_what_to_do) {
    ASSERT_TRUE(keys.keep(keyOf("Kestrel Lane", 1)));
    EXPECT_THAT(keys.choose("The old one", today).error().sentence,
                testing::AllOf(HasSubstr("There is no key “The old one” here"), HasSubstr("A lost key cannot be made again"),
                               HasSubstr("stays signed")));
}

TEST_F(Keys, an_expired_one_does_not_sign_and_does_not_stand_in_the_way_of_another) {
    ASSERT_TRUE(keys.keep(keyOf("Old", 1, Date{19'999})));
    EXPECT_THAT(keys.choose("", today).error().sentence, HasSubstr("expired"));
    EXPECT_THAT(keys.choose("Old", today).error().sentence, HasSubstr("expired"));
    ASSERT_TRUE(keys.keep(keyOf("New", 2, Date{20'000})));
    EXPECT_EQ(keys.choose("", today)->note.name, "New");
}

TEST_F(Keys, a_file_that_is_none_is_named_and_the_others_are_used) {
    ASSERT_TRUE(keys.keep(keyOf("Kestrel Lane", 1)));
    std::ofstream(keys.path() + "/broken.key") << "no key";
    ::chmod((keys.path() + "/broken.key").c_str(), 0600);
    EXPECT_EQ(keys.list().keys.size(), 1U);
    EXPECT_THAT(keys.list().problems.at(0), HasSubstr("broken.key"));
}

} // namespace
} // namespace caprail
