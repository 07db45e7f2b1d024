// SPDX-License-Identifier: GPL-3.0-or-later
#include <catalogue/place.h>
#include <gmock/gmock.h>

namespace caprail {
namespace {

using testing::HasSubstr;

std::string where(std::string_view typed) {
    const auto place = parseService(typed);
    EXPECT_TRUE(place) << (place ? "" : place.error().sentence);
    return place ? place->where : std::string();
}
std::string refusal(std::string_view typed) {
    const auto place = parseService(typed);
    EXPECT_FALSE(place) << typed;
    return place ? std::string() : place.error().sentence;
}

TEST(DatabaseName, is_a_service_a_url_or_words_for_the_library) {
    EXPECT_EQ(where(" shop\n"), "service='shop'");
    EXPECT_EQ(where("host=/run/postgresql dbname='the shop' user = o\\'hara"),
              "host='/run/postgresql' dbname='the shop' user='o\\'hara'");
    EXPECT_EQ(where("postgresql://bench@db.example:5433/caprail?sslmode=require&application_name=a%20b"),
              "user='bench' host='db.example' port='5433' dbname='caprail' sslmode='require' application_name='a b'");
    EXPECT_EQ(where("postgres://one:1,[::1]:2/x"), "host='one,::1' port='1,2' dbname='x'");
    EXPECT_EQ(where("postgresql://%2Frun%2Fpg/x"), "host='/run/pg' dbname='x'");
    EXPECT_EQ(where("postgresql:///x?host=/run/pg"), "dbname='x' host='/run/pg'");
    EXPECT_EQ(parseService("shop")->shownAs, "shop");
}

TEST(DatabaseName, never_holds_a_password) {
    for (const char* typed :
         {"postgresql://bench:secret@db/caprail", "host=db password=secret", "postgresql://db/caprail?password=secret",
          "host=db sslpassword=secret", "host=db PASSWORD=secret"}) {
        const std::string sentence = refusal(typed);
        EXPECT_THAT(sentence, HasSubstr("~/.pgpass")) << typed;
        EXPECT_EQ(sentence.find("secret"), std::string::npos) << "nor does the refusal say it again";
    }
}

TEST(DatabaseName, with_a_slip_of_the_hand_in_it_is_refused_and_not_said_again) {
    for (const char* typed : {"http://ann:secret@db/x",                   // another scheme
                              "ann:secret@db",                            // none
                              "host=db password='secret",                 // not closed
                              "host=db user=ann secret",                  // no word
                              "host=db Password=secret",                  // the library knows small letters alone
                              "host=db passwd=secret",                    // nor does it know this word
                              "host=db\npassword=secret",                 // a line feed is no space here
                              "host=ann:secret@db dbname=x",              // half a URL
                              "dbname=postgresql://ann:secret@db/x",      // a name in a name
                              "dbname='host=db password=secret'",         // likewise
                              "postgresql://ann:secret",                  // taken for a port
                              "postgresql://ann:se/secret@db/x",          // a stroke that ends the hosts
                              "postgresql://ann:12/secret@db/x",          // likewise, before what may be a port
                              "postgresql://ann:se?secret@db/x",          // a question mark, likewise
                              "postgresql://ann:12?secret@db/x",          //
                              "postgresql://db/x?sslmode=a;b&pwd=secret", // a sign that is refused before it
                              "postgresql://db/x?secret",                 // a word without a value
                              "postgresql://db/x?PASSWORD=secret",        //
                              "postgresql://db/x?oauth_client_secret=1"}) // a word that newer libraries know
    {
        EXPECT_EQ(refusal(typed).find("secret"), std::string::npos) << typed;
    }
}

TEST(DatabaseName, that_the_library_would_read_otherwise_is_refused) {
    EXPECT_THAT(refusal("  "), HasSubstr("No database is named"));
    for (const char* typed : {"my shop", "http://db/x", "host=a;b", "host='unclosed", "=x", "host=a dbname", "a'b",
                              "postgresql://db/x?=1", "file:///etc/passwd"}) {
        EXPECT_FALSE(refusal(typed).empty()) << typed;
    }
}

} // namespace
} // namespace caprail
