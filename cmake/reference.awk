# Makes the plain comment that opens a header the page of that file: its first line the summary, what is indented in it
# shown as it stands. What a header adds to namespace std is left out, as that namespace is not this library's to list:
# from the end of ours to the next directive.
FNR == 1 { opening = 1; print "/** \\file" }
opening && !/^\/\// { print shown ? "\\endverbatim */" : "*/"; opening = 0 }
opening {
    text = substr($0, 4)
    if (!shown && blank && text ~ /^  /) { print "\\verbatim"; shown = 1 }
    if (shown && text ~ /^ ?[^ ]/) { print "\\endverbatim"; shown = 0 }
    if (!shown) gsub(/[<>&#@\\]/, "\\\\&", text)
    print text
    blank = text == ""
    next
}
/^#(if|endif)/ && left_out { print "/// \\endcond"; left_out = 0 }
{ print }
/^} \/\/ namespace turncloth/ { print "/// \\cond"; left_out = 1 }
